// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/advice/advice_pages.hpp"

#include "app/desktop/advice/findings_page.hpp"
#include "app/desktop/advice/limits_page.hpp"
#include "app/desktop/advice/remedies_page.hpp"
#include "app/desktop/plot/plot_panel.hpp"
#include "app/desktop/shell/memory.hpp"
#include "app/drawing/tr.hpp"
#include "app/shared/price_reader.hpp"

#include <QFileDialog>

namespace fluewright {

namespace {

/// Under which name the path of the user's own price list is remembered.
const QString prices_name = QStringLiteral("prices");

}  // namespace

AdvicePages::AdvicePages(Document& document, PlotPanel& panel, Memory& memory)
    : QObject(&panel),
      panel_(panel),
      memory_(memory),
      findings_(new FindingsPage(document)),
      remedies_(new RemediesPage(document, shipped_prices())),
      limits_(new LimitsPage(document)) {
  panel_.add_page(findings_, tr("Findings"));
  panel_.add_page(remedies_, tr("Remedies"));
  panel_.add_page(limits_, tr("Limits"));
  connect(findings_, &FindingsPage::count_changed, this, &AdvicePages::name_findings);
  connect(findings_, &FindingsPage::help_wanted, this, [this] { open(Page::remedies); });
  connect(remedies_, &RemediesPage::own_prices_wanted, this, &AdvicePages::ask_for_prices);
  name_findings();
  use_prices(QString::fromUtf8(memory_.state(prices_name)));
}

void AdvicePages::ask_for_prices() {
  if (!memory_.state(prices_name).isEmpty()) {
    memory_.set_state(prices_name, {});
    remedies_->set_prices(shipped_prices(), false);
    return;
  }
  const QString path = QFileDialog::getOpenFileName(remedies_, tr("Price list"), QString(),
                                                    tr("Price lists (*.json)"));
  use_prices(path);
}

// A list that cannot be read is said, and the prices stay what they were.
void AdvicePages::use_prices(const QString& path) {
  if (path.isEmpty()) return;
  auto read = read_price_file(std::filesystem::path(path.toStdU16String()));
  if (const auto* why = std::get_if<std::string>(&read)) {
    remedies_->complain(QString::fromStdString(*why));
    return;
  }
  memory_.set_state(prices_name, path.toUtf8());
  remedies_->set_prices(std::get<PriceList>(std::move(read)), true);
}

void AdvicePages::open(Page page) {
  QWidget* pages[] = {findings_, remedies_, limits_};
  panel_.open_page(pages[static_cast<int>(page)]);
}

void AdvicePages::name_findings() {
  const int open = findings_->open_count();
  panel_.name_page(findings_, open > 0 ? tr("Findings (%1)").arg(open) : tr("Findings"));
}

}  // namespace fluewright
