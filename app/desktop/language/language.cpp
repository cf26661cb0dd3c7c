// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/language/language.hpp"

#include "app/shared/said.hpp"

#include <QApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>

#include <algorithm>

namespace fluewright {

namespace {

bool is_known(const QString& code) {
  return std::any_of(languages.begin(), languages.end(), [&code](const Language& language) { return code == QLatin1String(language.code); });
}

std::string in_force(const char* english) { return QCoreApplication::translate("Words", english).toStdString(); }

void say(std::string& text) {
  if (!text.empty()) text = QCoreApplication::translate("Catalogue", text.c_str()).toStdString();
}

void say(FieldSpec& spec) {
  say(spec.label);
  say(spec.help);
}

}  // namespace

QString language_code(const QString& wanted) {
  if (is_known(wanted)) return wanted;
  const QString system = QLocale::system().name().left(2);
  return is_known(system) ? system : QStringLiteral("en");
}

void speak(QApplication& application, const QString& code) {
  const QLocale locale(code);
  QLocale::setDefault(locale);
  set_decimal_mark(locale.decimalPoint() == QLatin1String(",") ? ',' : '.');
  if (code == QLatin1String("en")) {
    speak_by(nullptr);
    return;
  }
  for (const auto& [file, folder] :
       {std::pair{QStringLiteral("fluewright_") + code, QStringLiteral(":/i18n")},
        std::pair{QStringLiteral("qtbase_") + code, QLibraryInfo::path(QLibraryInfo::TranslationsPath)}}) {
    auto* translator = new QTranslator(&application);
    if (translator->load(file, folder)) application.installTranslator(translator);
  }
  speak_by(in_force);
}

std::shared_ptr<const Library> spoken(std::shared_ptr<const Library> library) {
  auto said_library = std::make_shared<Library>(*library);
  for (PieceType& type : said_library->piece_types) {
    say(type.name);
    say(type.summary);
    for (FieldSpec& field : type.fields) say(field);
  }
  for (FieldSpec& condition : said_library->conditions) say(condition);
  for (Material& material : said_library->materials) say(material.name);
  for (Wall& wall : said_library->walls) say(wall.name);
  for (WoodSpecies& wood : said_library->woods) say(wood.name);
  for (MoistureState& state : said_library->moisture_states) say(state.name);
  return said_library;
}

}  // namespace fluewright
