// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/start/tour.hpp"

#include "app/desktop/theme/theme.hpp"
#include "engine/layout/starter.hpp"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

#include <algorithm>

namespace fluewright {

namespace {
constexpr int gestures = 3;
}

DesignDocument Tour::example(const Library& library) {
  DesignDocument file;
  file.file_version = current_file_version;
  StarterAnswers answers;
  answers.shape = BenchShape::straight;
  answers.bench = 2.0 * metre;
  const EditResult built = starter_path(library, answers);
  if (!built.design) return file;
  Design design = *built.design;
  // Only as far as the bench: the rest is to be drawn.
  const auto bench = std::find_if(design.pieces.begin(), design.pieces.end(), [](const Piece& p) { return p.type == StarterTypes{}.run; });
  std::vector<PieceId> beyond;
  for (auto piece = bench; piece != design.pieces.end(); ++piece) {
    if (piece != bench) beyond.push_back(piece->id);
  }
  std::erase_if(design.joints, [&beyond](const Joint& joint) {
    return std::any_of(beyond.begin(), beyond.end(), [&joint](const PieceId& id) { return joint.a.piece == id || joint.b.piece == id; });
  });
  std::erase_if(design.pieces, [&beyond](const Piece& piece) { return std::find(beyond.begin(), beyond.end(), piece.id) != beyond.end(); });
  file.design = std::move(design);
  return file;
}

Tour::Tour(Document& document, QWidget* desk)
    : QFrame(desk), document_(document), number_(new QLabel), words_(new QLabel), skip_(new QPushButton(tr("&Skip"))) {
  setObjectName(QStringLiteral("tour"));
  setFrameShape(QFrame::Box);
  setAutoFillBackground(true);
  setAccessibleName(tr("Three gestures"));
  number_->setProperty("role", "heading");
  words_->setWordWrap(true);
  skip_->setObjectName(QStringLiteral("tour_skip"));
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(14, 10, 14, 10);
  row->setSpacing(14);
  row->addWidget(number_);
  row->addWidget(words_, 1);
  row->addWidget(skip_);
  connect(skip_, &QPushButton::clicked, this, &Tour::over);
  connect(&document_.undo_stack(), &QUndoStack::indexChanged, this, &Tour::follow);
  connect(&document_, &Document::adopted, this, &Tour::over);  // the example is gone
  steps_ = document_.undo_stack().index();
  joints_ = document_.design().joints.size();
  desk->installEventFilter(this);
  show_gesture();
  show();
}

void Tour::follow(int steps) {
  const std::size_t joints = document_.design().joints.size();
  const bool drawn = steps > steps_;
  const bool taken_back = steps < steps_;
  const int before = gesture_;
  if (gesture_ == 0 && drawn) gesture_ = 1;
  else if (gesture_ == 1 && drawn && joints == joints_) gesture_ = 2;
  else if (gesture_ == 2 && taken_back) gesture_ = gestures;
  steps_ = steps;
  joints_ = joints;
  if (gesture_ != before) show_gesture();
}

void Tour::show_gesture() {
  switch (gesture_) {
    case 0: words_->setText(tr("Press on the ring with the plus at the end of the bench and drag: the path grows. Drag across for an elbow.")); break;
    case 1: words_->setText(tr("Now press on a joint between two pieces and drag it: the runs beside it stretch, and the answer follows at once.")); break;
    case 2: words_->setText(tr("Press Ctrl+Z to take that back. Every gesture is one step, as far back as you like.")); break;
    default: words_->setText(tr("That is all there is to drawing. Pieces come from the rack to the left; F1 lists the keys.")); break;
  }
  const bool done = gesture_ >= gestures;
  number_->setText(done ? QStringLiteral("✓") : tr("%1 of %2").arg(gesture_ + 1).arg(gestures));
  skip_->setText(done ? tr("&Close") : tr("&Skip"));
  setAccessibleDescription(words_->text());
  place();
}

bool Tour::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Resize) place();
  return QFrame::eventFilter(watched, event);
}

void Tour::place() {
  const QWidget* desk = parentWidget();
  const int width = std::min(620, desk->width() - 40);
  const int height = std::max(sizeHint().height(), heightForWidth(width));
  setGeometry((desk->width() - width) / 2, desk->height() - height - 24, width, height);
  raise();
}

}  // namespace fluewright
