// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// One expression in two versions: the twin that must compile, and the mistake that must not. A file in this folder
// holds exactly one, and is compiled both ways: only the mistake itself can be why the second attempt fails.
#ifdef FLUEWRIGHT_MISTAKE
#define TWIN(right, mistake) mistake
#else
#define TWIN(right, mistake) right
#endif
