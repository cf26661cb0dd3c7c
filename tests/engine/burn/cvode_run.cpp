// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/engine/burn/cvode_run.hpp"

#include <cvode/cvode.h>
#include <nvector/nvector_serial.h>
#include <sundials/sundials_context.h>
#include <sunlinsol/sunlinsol_band.h>
#include <sunlinsol/sunlinsol_dense.h>
#include <sunmatrix/sunmatrix_band.h>
#include <sunmatrix/sunmatrix_dense.h>

#include <algorithm>

namespace fluewright::test {
namespace {

struct Problem {
  kernel::BurnEquations* equations;
  const kernel::Interval* interval;
};

int rates(realtype t, N_Vector y, N_Vector f, void* data) {
  const auto* problem = static_cast<const Problem*>(data);
  problem->equations->rates(t, *problem->interval, N_VGetArrayPointer(y), N_VGetArrayPointer(f));
  return 0;
}

}  // namespace

CvodeResult run_cvode(kernel::BurnEquations& equations, const kernel::Interval& interval, std::vector<double> state,
                      double relative, bool banded, const std::vector<double>& times,
                      std::vector<std::vector<double>>* at) {
  CvodeResult result;
  SUNContext context = nullptr;
  if (SUNContext_Create(nullptr, &context) != 0) return result;
  const auto size = static_cast<sunindextype>(state.size());
  N_Vector y = N_VMake_Serial(size, state.data(), context);
  N_Vector tolerance = N_VNew_Serial(size, context);
  N_VConst(relative * 10.0, tolerance);  // temperatures: 0.01 K at a relative 1e-3 of some hundred
  for (const kernel::Cell& cell : equations.cells().cells) N_VGetArrayPointer(tolerance)[cell.base + 1] = relative;
  for (const kernel::BranchCells& b : equations.cells().branches) N_VGetArrayPointer(tolerance)[b.flow] = relative * 1e-2;
  Problem problem{&equations, &interval};
  void* memory = CVodeCreate(CV_BDF, context);
  CVodeInit(memory, rates, interval.begin, y);
  CVodeSVtolerances(memory, relative, tolerance);
  CVodeSetUserData(memory, &problem);
  CVodeSetMaxNumSteps(memory, 2000000);
  std::size_t widest = 0;
  for (const kernel::Cell& cell : equations.cells().cells) widest = std::max(widest, 2 + cell.node_count);
  const auto band = static_cast<sunindextype>(widest + 2);
  SUNMatrix matrix = banded ? SUNBandMatrix(size, band, band, context) : SUNDenseMatrix(size, size, context);
  SUNLinearSolver solver = banded ? SUNLinSol_Band(y, matrix, context) : SUNLinSol_Dense(y, matrix, context);
  CVodeSetLinearSolver(memory, solver, matrix);
  result.done = true;
  for (const double until : times) {
    realtype reached = 0.0;
    CVodeSetStopTime(memory, until);
    if (CVode(memory, until, y, &reached, CV_NORMAL) < 0) {
      result.done = false;
      break;
    }
    if (at != nullptr) at->emplace_back(N_VGetArrayPointer(y), N_VGetArrayPointer(y) + size);
  }
  result.state.assign(N_VGetArrayPointer(y), N_VGetArrayPointer(y) + size);
  long for_jacobian = 0;
  CVodeGetNumSteps(memory, &result.steps);
  CVodeGetNumRhsEvals(memory, &result.rates);
  CVodeGetNumLinRhsEvals(memory, &for_jacobian);
  result.rates += for_jacobian;
  SUNLinSolFree(solver);
  SUNMatDestroy(matrix);
  CVodeFree(&memory);
  N_VDestroy(tolerance);
  N_VDestroy(y);
  SUNContext_Free(&context);
  return result;
}

}  // namespace fluewright::test
