// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/paper/output.hpp"

#include <QDialog>
#include <QPointer>
#include <QTimer>

#include <memory>

class QComboBox;
class QDoubleSpinBox;
class QFormLayout;
class QLabel;
class QProgressBar;
class QThread;
class QPrinter;
class QPrintPreviewWidget;
class QPushButton;

namespace fluewright {

class Document;

/// Which page of paper, on what, with a look at it before it is printed or saved. Pages are laid out beside the window;
/// a change while that lasts starts it anew, and what is shown is never an older choice. The card's table of starts is
/// computed the first time it is asked for, with its progress, and can be called off: then the card says so.
class PaperDialog : public QDialog {
  Q_OBJECT

 public:
  PaperDialog(const Document& document, const QString& name, QWidget* parent);
  ~PaperDialog() override;

  /// The pages shown; empty while they are being laid out.
  [[nodiscard]] const std::vector<paper::Sheet>& sheets() const { return sheets_; }
  /// Writes them; a sentence if that went wrong.
  [[nodiscard]] PaperFault save_pdf(const QString& path) const;

 signals:
  void said(const QString& sentence);
  void laid_out();

 private:
  void build_controls();
  [[nodiscard]] PaperOptions options() const;
  void page_chosen();
  void lay_out();
  [[nodiscard]] bool starts_wanted() const;
  void look_at_starts();
  void call_off_starts();
  void show_pages(std::vector<paper::Sheet> sheets);
  void paint(QPrinter* printer) const;
  void ask_and_save();
  void ask_and_print();

  Design design_;
  const Library& library_;
  UnitSystem units_;
  QString name_;
  std::vector<PaperVariant> variants_;  ///< the others of the file
  std::string variant_name_;
  std::unique_ptr<QPrinter> printer_;
  QComboBox* page_ = nullptr;
  QComboBox* size_ = nullptr;
  QFormLayout* form_ = nullptr;
  QComboBox* before_ = nullptr;
  QDoubleSpinBox* stock_ = nullptr;
  QDoubleSpinBox* kerf_ = nullptr;
  QDoubleSpinBox* overlap_ = nullptr;
  QDoubleSpinBox* sand_ = nullptr;
  QDoubleSpinBox* clay_ = nullptr;
  QLabel* state_ = nullptr;
  QProgressBar* progress_ = nullptr;
  QPushButton* call_off_ = nullptr;
  QPushButton* print_ = nullptr;
  QPushButton* save_ = nullptr;
  QPrintPreviewWidget* preview_ = nullptr;
  std::vector<paper::Sheet> sheets_;
  std::unique_ptr<CardTableJob> starts_job_;
  std::optional<CardTable> starts_;
  bool starts_called_off_ = false;
  QTimer glance_;
  int wanted_ = 0;  ///< the last layout asked for
  std::vector<QPointer<QThread>> layouts_;  ///< at work, or ended and gone
};

}  // namespace fluewright
