// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/language/language.hpp"

#include "app/drawing/tr.hpp"
#include "app/shared/library_reader.hpp"
#include "app/shared/said_library.hpp"

#include <QApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>

#include <algorithm>
#include <vector>

namespace fluewright {

namespace {

/// All texts of the program share one context, whichever class asks: the same English is the same German everywhere.
class Words final : public QTranslator {
 public:
  using QTranslator::QTranslator;
  QString translate(const char*, const char* english, const char* comment, int count) const override {
    return QTranslator::translate("Words", english, comment, count);
  }
};

struct InForce {
  QString code = QStringLiteral("en");
  std::vector<std::unique_ptr<QTranslator>> translators;
};

InForce& in_force() {
  static InForce now;
  return now;
}

bool is_known(const QString& code) {
  return std::any_of(languages.begin(), languages.end(),
                     [&code](const Language& language) { return code == QLatin1String(language.code); });
}

void install(QApplication& application, std::unique_ptr<QTranslator> translator, const QString& file, const QString& folder) {
  if (!translator->load(file, folder)) return;
  application.installTranslator(translator.get());
  in_force().translators.push_back(std::move(translator));
}

std::string in_words(const char* english) { return tr(english).toStdString(); }

}  // namespace

QString language_code(const QString& wanted) {
  if (is_known(wanted)) return wanted;
  const QString system = QLocale::system().name().left(2);
  return is_known(system) ? system : QStringLiteral("en");
}

void speak(QApplication& application, const QString& code) {
  InForce& now = in_force();
  for (const auto& translator : now.translators) application.removeTranslator(translator.get());
  now.translators.clear();
  now.code = code;
  const QLocale locale(code);
  QLocale::setDefault(locale);
  const bool english = code == QLatin1String("en");
  if (!english) {
    install(application, std::make_unique<QTranslator>(), QStringLiteral("qtbase_") + code,
            QLibraryInfo::path(QLibraryInfo::TranslationsPath));
    install(application, std::make_unique<Words>(), QStringLiteral("fluewright_") + code, QStringLiteral(":/language"));
  }
  speak_by(english ? nullptr : in_words, locale.decimalPoint() == QLatin1String(",") ? ',' : '.');
}

QString spoken_language() { return in_force().code; }

std::shared_ptr<const Library> spoken_library() {
  if (spoken_language() == QLatin1String("en")) return shipped_library();
  return std::make_shared<const Library>(said_library(*shipped_library()));
}

QString inside_sentence(const QString& label) {
  return spoken_language() == QLatin1String("de") ? label : label.toLower();
}

}  // namespace fluewright
