# SPDX-FileCopyrightText: The Fluewright developers
# SPDX-License-Identifier: GPL-3.0-or-later
"""Reads a DXF file with a library of its own and says what is in it, as JSON."""
import json
import sys

import ezdxf

document = ezdxf.readfile(sys.argv[1])
layers = {}
mass = [1e9, 1e9, -1e9, -1e9]
for entity in document.modelspace():
    layers[entity.dxf.layer] = layers.get(entity.dxf.layer, 0) + 1
    if entity.dxftype() == "POLYLINE" and entity.dxf.layer == "MASS":
        for point in entity.points():
            mass = [min(mass[0], point.x), min(mass[1], point.y), max(mass[2], point.x), max(mass[3], point.y)]
print(json.dumps({"version": document.dxfversion, "errors": len(document.audit().errors), "layers": layers, "mass": mass}))
