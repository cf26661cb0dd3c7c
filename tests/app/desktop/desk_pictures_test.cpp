// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Golden pictures of the views, light and dark, metric and imperial. What is compared is what an eye would: both
// pictures are blurred and made small, and the mean and the largest difference of their tones must stay small.
//   FLUEWRIGHT_NEW_PICTURES=1 ctest -R Pictures     takes them anew, to be looked at before they are committed

#include "desk_hand.hpp"

#include <QDir>
#include <QImage>

namespace fluewright {
namespace {

using test::Drafter;

constexpr int across = 96;           // pixels of the small picture
constexpr double mean_allowed = 1.5;  // of 255
constexpr int largest_allowed = 48;

QImage small(const QImage& picture) {
  return picture.convertToFormat(QImage::Format_RGB32).scaledToWidth(across, Qt::SmoothTransformation);
}

struct Difference {
  double mean = 0.0;
  int largest = 0;
};

Difference difference(const QImage& a, const QImage& b) {
  Difference found;
  double sum = 0.0;
  for (int y = 0; y < a.height(); ++y) {
    for (int x = 0; x < a.width(); ++x) {
      const QRgb p = a.pixel(x, y);
      const QRgb q = b.pixel(x, y);
      for (const int by : {qRed(p) - qRed(q), qGreen(p) - qGreen(q), qBlue(p) - qBlue(q)}) {
        sum += std::abs(by);
        found.largest = std::max(found.largest, std::abs(by));
      }
    }
  }
  found.mean = sum / (3.0 * a.width() * a.height());
  return found;
}

struct Look {
  const char* name;
  ViewKind kind;
  Sheet sheet;
  UnitSystem units;
  bool pipes = false;
};

class Pictures : public testing::TestWithParam<Look> {};

TEST_P(Pictures, LookAsTheyWereSeenToBeRight) {
  const Look& look = GetParam();
  Drafter hand;
  apply_theme(*qApp, look.sheet);
  hand.document.set_units(look.units);
  hand.open("bench_spring_200");
  DeskView view(hand.board(), look.kind);
  hand.board().set_pipe_drawing(look.pipes);
  view.resize(640, 480);
  view.camera().set_size(view.size());
  view.fit();
  const QImage picture = view.grab().toImage();
  apply_theme(*qApp, Sheet::day);
  const QString path = QStringLiteral(DESK_PICTURES "/%1.png").arg(look.name);
  if (qEnvironmentVariableIsSet("FLUEWRIGHT_NEW_PICTURES")) {
    QDir().mkpath(QStringLiteral(DESK_PICTURES));
    ASSERT_TRUE(picture.save(path));
    return;
  }
  const QImage golden(path);
  ASSERT_FALSE(golden.isNull()) << path.toStdString();
  ASSERT_EQ(golden.size(), picture.size());
  const Difference found = difference(small(golden), small(picture));
  if (found.mean > mean_allowed || found.largest > largest_allowed) picture.save(QStringLiteral("%1.now.png").arg(look.name));
  EXPECT_LT(found.mean, mean_allowed);
  EXPECT_LT(found.largest, largest_allowed);
}

TEST(PictureComparison, SeesAMissingPiece) {
  Drafter hand;
  hand.open("bench_spring_200");
  DeskView view(hand.board(), ViewKind::plan);
  view.resize(640, 480);
  view.camera().set_size(view.size());
  view.fit();
  const QImage whole = view.grab().toImage();
  const Camera camera = view.camera();
  hand.document.commit(*remove_piece(hand.document.design(), hand.document.library(), "p4").design, "no barrel");
  view.camera() = camera;
  const Difference found = difference(small(whole), small(view.grab().toImage()));
  EXPECT_TRUE(found.mean > mean_allowed || found.largest > largest_allowed) << found.mean << ' ' << found.largest;
}

INSTANTIATE_TEST_SUITE_P(
    Views, Pictures,
    testing::Values(Look{"plan_light_metric", ViewKind::plan, Sheet::day, UnitSystem::metric},
                    Look{"plan_dark_imperial", ViewKind::plan, Sheet::night, UnitSystem::imperial},
                    Look{"front_light_metric", ViewKind::front, Sheet::day, UnitSystem::metric},
                    Look{"front_light_imperial", ViewKind::front, Sheet::day, UnitSystem::imperial},
                    Look{"front_dark_metric", ViewKind::front, Sheet::night, UnitSystem::metric},
                    Look{"unrolled_light_metric", ViewKind::unrolled, Sheet::day, UnitSystem::metric},
                    Look{"unrolled_dark_imperial", ViewKind::unrolled, Sheet::night, UnitSystem::imperial},
                    Look{"isometric_light_metric", ViewKind::isometric, Sheet::day, UnitSystem::metric},
                    Look{"isometric_dark_imperial", ViewKind::isometric, Sheet::night, UnitSystem::imperial},
                    Look{"pipes_light_metric", ViewKind::isometric, Sheet::day, UnitSystem::metric, true},
                    Look{"pipes_dark_imperial", ViewKind::isometric, Sheet::night, UnitSystem::imperial, true},
                    Look{"plan_contrast", ViewKind::plan, Sheet::contrast_day, UnitSystem::metric},
                    Look{"front_contrast_dark", ViewKind::front, Sheet::contrast_night, UnitSystem::metric}),
    [](const auto& of) { return std::string(of.param.name); });

}  // namespace
}  // namespace fluewright
