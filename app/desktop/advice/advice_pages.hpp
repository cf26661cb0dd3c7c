// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document.hpp"

#include <QObject>

namespace fluewright {

class FindingsPage;
class LimitsPage;
class Memory;
class PlotPanel;
class RemediesPage;

/// The pages under the drawing beside the plots: what is wrong, what would help, how far one can go.
class AdvicePages : public QObject {
  Q_OBJECT

 public:
  AdvicePages(Document& document, PlotPanel& panel, Memory& memory);

  enum class Page { findings, remedies, limits };
  void open(Page page);

 private:
  void name_findings();
  void ask_for_prices();
  void use_prices(const QString& path);

  PlotPanel& panel_;
  Memory& memory_;
  FindingsPage* findings_;
  RemediesPage* remedies_;
  LimitsPage* limits_;
};

}  // namespace fluewright
