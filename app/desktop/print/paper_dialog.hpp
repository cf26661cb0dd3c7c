// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/paper/output.hpp"

#include <QDialog>
#include <QPointer>

#include <memory>

class QComboBox;
class QDoubleSpinBox;
class QLabel;
class QThread;
class QPrinter;
class QPrintPreviewWidget;
class QPushButton;

namespace fluewright {

class Document;

/// Which page of paper, on what, with a look at it before it is printed or saved. Pages are laid out beside the window;
/// a change while that lasts starts it anew, and what is shown is never an older choice.
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
  void lay_out();
  void show_pages(std::vector<paper::Sheet> sheets);
  void paint(QPrinter* printer) const;
  void ask_and_save();
  void ask_and_print();

  Design design_;
  const Library& library_;
  UnitSystem units_;
  QString name_;
  std::unique_ptr<QPrinter> printer_;
  QComboBox* page_ = nullptr;
  QComboBox* size_ = nullptr;
  QDoubleSpinBox* stock_ = nullptr;
  QDoubleSpinBox* kerf_ = nullptr;
  QDoubleSpinBox* overlap_ = nullptr;
  QDoubleSpinBox* sand_ = nullptr;
  QDoubleSpinBox* clay_ = nullptr;
  QLabel* state_ = nullptr;
  QPushButton* print_ = nullptr;
  QPushButton* save_ = nullptr;
  QPrintPreviewWidget* preview_ = nullptr;
  std::vector<paper::Sheet> sheets_;
  int wanted_ = 0;  ///< the last layout asked for
  std::vector<QPointer<QThread>> layouts_;  ///< at work, or ended and gone
};

}  // namespace fluewright
