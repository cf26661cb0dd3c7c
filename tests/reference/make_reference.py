#!/usr/bin/python3
# SPDX-FileCopyrightText: The Fluewright developers
# SPDX-License-Identifier: GPL-3.0-or-later
"""Writes the reference tables that the tests of the laws read, next to this file.

Needs the Debian packages python3-fluids (1.0.22, MIT) and python3-scipy. Run by hand when a table shall change:

    /usr/bin/python3 tests/reference/make_reference.py

friction.csv      Darcy friction factors: 64/Re, Colebrook, Churchill 1977, by fluids
fittings.csv      loss coefficients of tees, diffusers, reducers and entries, by fluids
atmosphere.csv    U.S. Standard Atmosphere 1976, by fluids
penetration.csv   heating of a wide solid around a cylinder, the exact integral of Carslaw & Jaeger 13.5 eq. 5, by scipy
emissivity.csv    emissivity of CO2 + H2O by Leckner 1972, coefficients from memory: a second published closure
"""

import csv
import math
import pathlib

import fluids
from fluids import fittings
from fluids.atmosphere import ATMOSPHERE_1976
from fluids.friction import Churchill_1977, friction_factor
from scipy.integrate import quad
from scipy.special import j0, y0

HERE = pathlib.Path(__file__).parent


def write(name, head, rows):
    with open(HERE / name, "w", newline="") as file:
        out = csv.writer(file, lineterminator="\n")
        out.writerow(head)
        out.writerows(rows)


def friction():
    for re in (500, 1000, 1500, 2000, 2500, 3000, 3500, 4000, 5000, 6000, 8000, 1e4, 2e4, 5e4, 1e5, 1e6):
        for rough in (0.0, 1e-4, 1e-3, 5e-3, 1e-2, 3e-2, 5e-2):
            yield (
                f"{re:g}",
                f"{rough:g}",
                repr(64.0 / re),
                repr(friction_factor(re, rough, Method="Colebrook")) if re >= 4000 else "",
                repr(Churchill_1977(re, rough)),
            )


def tees():
    for angle in (30, 45, 60, 90):
        for bore in (0.075, 0.1, 0.125, 0.15):
            for share in (0.1, 0.2, 0.3, 0.5, 0.7, 0.9, 1.0):
                flows = (0.15, bore, 1.0 - share, share)
                ratio = (bore / 0.15) ** 2
                for name, k in (
                    ("converging_branch", fittings.K_branch_converging_Crane(*flows, angle=angle)),
                    ("converging_run", fittings.K_run_converging_Crane(*flows, angle=angle)),
                    ("diverging_branch", fittings.K_branch_diverging_Crane(*flows, angle=angle)),
                    ("diverging_run", fittings.K_run_diverging_Crane(*flows, angle=angle)),
                ):
                    yield name, repr(share), repr(ratio), angle, repr(k)


def steps():
    for narrow, wide in ((0.15, 0.2), (0.15, 0.3), (0.2, 0.25)):
        ratio = (narrow / wide) ** 2
        yield "sudden_expansion", repr(ratio), "", "", repr(fittings.diffuser_sharp(narrow, wide))
        for angle in (20, 30, 60, 90):
            yield (
                "gradual_expansion",
                repr(ratio),
                "",
                angle,
                repr(fittings.diffuser_conical(narrow, wide, angle=angle, method="Crane")),
            )
            # The library refers a contraction to its narrow end, as we do.
            yield (
                "gradual_contraction",
                repr(ratio),
                "",
                angle,
                repr(fittings.contraction_conical(wide, narrow, fd=0.02, angle=angle, method="Crane")),
            )
    for angle in (20, 30, 45, 60, 75, 90):
        yield "mitre_bend", "", "", angle, repr(fittings.bend_miter(angle=angle, method="Rennels"))


def atmosphere():
    for z in (0, 250, 500, 1000, 1500, 2000, 2500, 3000):
        air = ATMOSPHERE_1976(z)
        yield z, repr(air.P), repr(air.rho), repr(air.T), repr(air.mu), repr(air.k)


def step_heating(fourier):
    """Dimensionless flux into the solid: 4/pi^2 int exp(-Fo u^2) / (u (J0^2 + Y0^2)) du, in x = ln u."""
    low, high = -25.0, math.log(math.sqrt(60.0 / fourier))

    def inside(x):
        u = math.exp(x)
        return math.exp(-fourier * u * u) / (j0(u) ** 2 + y0(u) ** 2)

    # Below x = -25 the Bessel functions are their small-argument forms and the integral is an arctangent.
    half_pi = 0.5 * math.pi
    tail = half_pi * (half_pi + math.atan((low - math.log(2.0) + 0.5772156649015329) / half_pi))
    cuts = [low, -10.0, -4.0, -2.0, -1.0, 0.0, 1.0, high] if high > 1.0 else [low, -10.0, -4.0, high]
    return 4.0 / math.pi**2 * (tail + sum(quad(inside, a, b, limit=400)[0] for a, b in zip(cuts, cuts[1:])))


def penetration():
    for fourier in (0.01, 0.03, 0.1, 0.2, 0.3, 0.5, 0.8, 1.0, 1.5, 2.0, 3.0, 5.0, 10.0, 20.0, 50.0, 100.0, 1000.0, 10000.0):
        yield repr(fourier), repr(1.0 / step_heating(fourier))


WATER = ((-2.2118, -1.1987, 0.035596), (0.85667, 0.93048, -0.14391), (-0.10838, -0.17156, 0.045915))
CARBON_DIOXIDE = (
    (-3.9893, 2.7669, -2.1081, 0.39163),
    (1.2710, -1.1090, 1.0195, -0.21897),
    (-0.23678, 0.19731, -0.19544, 0.044644),
)


def leckner(t, carbon_dioxide, water, path):
    """Total emissivity at 1 bar; partial pressures in bar, path in cm. Leckner, Combust. Flame 19 (1972) 33."""
    t /= 1000.0

    def thin(c, pressure_path):
        x = math.log10(pressure_path)
        return math.exp(sum(cij * t**j * x**i for i, row in enumerate(c) for j, cij in enumerate(row)))

    def pressure_correction(a, b, c, effective, peak, pressure_path):
        share = (a - 1.0) * (1.0 - effective) / (a + b - 1.0 + effective)
        return 1.0 - share * math.exp(-c * math.log10(peak / pressure_path) ** 2)

    e_water = thin(WATER, water * path) * pressure_correction(
        2.144 if t < 0.75 else 1.888 - 2.053 * math.log10(t),
        1.10 * t**-1.4,
        0.5,
        1.0 + 2.56 * water / math.sqrt(t),
        13.2 * t * t,
        water * path,
    )
    e_dioxide = thin(CARBON_DIOXIDE, carbon_dioxide * path) * pressure_correction(
        1.0 + 0.1 / t**1.45,
        0.23,
        1.47,
        1.0 + 0.28 * carbon_dioxide,
        0.054 / (t * t) if t < 0.7 else 0.225 * t * t,
        carbon_dioxide * path,
    )
    share = water / (water + carbon_dioxide)
    overlap = (share / (10.7 + 101.0 * share) - 0.0089 * share**10.4) * max(
        math.log10((water + carbon_dioxide) * path), 0.0
    ) ** 2.76
    return e_water + e_dioxide - overlap


def emissivity():
    for path in (0.14, 0.3, 0.6, 1.5):
        for carbon_dioxide, water in ((0.05, 0.08), (0.08, 0.08), (0.13, 0.15)):
            for t in (600, 700, 800, 1000, 1200, 1500):
                yield t, carbon_dioxide, water, path, repr(leckner(t, carbon_dioxide, water, 100.0 * path))


if __name__ == "__main__":
    print("fluids", fluids.__version__)
    write("friction.csv", ("reynolds", "relative_roughness", "laminar", "colebrook", "churchill"), friction())
    write("fittings.csv", ("law", "first", "second", "angle_deg", "coefficient"), [*tees(), *steps()])
    write("atmosphere.csv", ("z_m", "pressure_Pa", "density_kg_m3", "temperature_K", "viscosity_Pa_s",
                             "conductivity_W_mK"), atmosphere())
    write("penetration.csv", ("fourier", "resistance_k_over_a"), penetration())
    write("emissivity.csv", ("t_K", "co2_bar", "h2o_bar", "path_m", "emissivity"), emissivity())
