// SPDX-License-Identifier: MIT
#include "ui/pages/setup/setuppage.h"

#include "core/checklist/reader.h"
#include "ui/pages/panelfields.h"
#include "ui/pages/setup/escalationsheet.h"
#include "ui/text/errortext.h"
#include "ui/text/wardtext.h"
#include "ui/widgets/foldingrow.h"
#include "ui/widgets/sheet.h"
#include "ui/widgets/wraplabel.h"

#include <algorithm>
#include <QComboBox>
#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QLineEdit>
#include <QPushButton>
#include <QTimeZone>
#include <QVBoxLayout>

namespace cradlepost {

namespace {

/** Letters, digits and dashes of a name: "Sorrel Hill" is sorrel-hill. */
std::string idFromName(const QString& name)
{
    std::string id;
    for (const QChar c : name.toLower().normalized(QString::NormalizationForm_D)) {
        const bool plain = (c >= QLatin1Char('a') && c <= QLatin1Char('z')) || (c >= QLatin1Char('0') && c <= QLatin1Char('9'));
        if (plain)
            id += c.toLatin1();
        else if ((c.isSpace() || c == QLatin1Char('-')) && !id.empty() && id.back() != '-')
            id += '-';
    }
    id = id.substr(0, 24);
    while (!id.empty() && id.back() == '-')
        id.pop_back();
    return id.empty() ? "ward" : id;
}

/** The first measured item with more than one set of limits: the one that a site picks for itself. */
const Item* itemWithSets(const Checklist& checklist)
{
    for (const Section& section : checklist.sections) {
        for (const Item& item : section.items) {
            const auto* rule = std::get_if<MeasureRule>(&item.rule);
            if (rule != nullptr && rule->limits.size() > 1)
                return &item;
        }
    }
    return nullptr;
}

/** Wide enough for what it holds, as far as a page has room: rather than cut it the columns fold. */
void showWhole(QLineEdit& edit, const Theme& theme)
{
    const int text = edit.fontMetrics().horizontalAdvance(edit.text()) + 2 * theme.space(Space::Apart);
    edit.setMinimumWidth(std::min(text, theme.px(400)));
    edit.setCursorPosition(0); // what does not fit all the same is cut at its end
}

}

SetupPage::SetupPage(Ward& ward, Settings settings, QWidget* parent)
    : QWidget(parent)
    , m_ward(ward)
    , m_settings(std::move(settings))
    , m_name(new QLineEdit)
    , m_zone(new QComboBox)
    , m_pattern(new QComboBox)
    , m_starts(new QLineEdit)
    , m_people(new QLineEdit)
    , m_limits(new QComboBox)
    , m_language(new QComboBox)
    , m_text(new QComboBox)
    , m_scheme(new QComboBox)
    , m_source(new WrapLabel({}, TextRole::Small))
    , m_said(new WrapLabel)
    , m_checked(new WrapLabel)
{
    const Theme& theme = themeOf(*this);
    auto* page = new QVBoxLayout(this);
    page->setContentsMargins(theme.space(Space::Wide), theme.space(Space::Apart), theme.space(Space::Wide),
        theme.space(Space::Apart));
    auto* row = new FoldingRow;
    row->setSpacing(theme.space(Space::Apart));
    row->addWidget(makeWard(), 3, Qt::AlignTop);
    auto* side = new QWidget;
    auto* right = new QVBoxLayout(side);
    right->setContentsMargins(0, 0, 0, 0);
    right->setSpacing(theme.space(Space::Near));
    right->addWidget(makeLook());
    right->addWidget(new EscalationSheet(m_ward));
    right->addWidget(makeDatabase());
    auto* cautions = new WrapLabel(WardText::cautions(), TextRole::Small);
    cautions->setTone(Tone::Soft);
    right->addWidget(cautions);
    row->addWidget(side, 2, Qt::AlignTop);
    page->addWidget(row);
    page->addStretch(1);
    load();
}

Sheet* SetupPage::makeWard()
{
    auto* sheet = new Sheet(tr("This ward"));
    m_name->setObjectName(QStringLiteral("unitNameEdit"));
    m_name->setMaxLength(60);
    m_zone->setEditable(true);
    m_zone->setObjectName(QStringLiteral("zoneComboBox"));
    for (const QByteArray& id : QTimeZone::availableTimeZoneIds())
        m_zone->addItem(QString::fromLatin1(id));
    m_pattern->setObjectName(QStringLiteral("patternComboBox"));
    m_pattern->addItem(tr("Two shifts of 12 hours"), qs(patternText(ShiftPattern::twoByTwelve())));
    m_pattern->addItem(tr("Three shifts of 8 hours"), qs(patternText(ShiftPattern::threeByEight())));
    m_pattern->addItem(tr("Our own"), QString());
    m_starts->setObjectName(QStringLiteral("startsEdit"));
    m_people->setObjectName(QStringLiteral("peopleEdit"));
    m_people->setPlaceholderText(tr("Initials, with commas between"));
    m_limits->setObjectName(QStringLiteral("limitsComboBox"));
    addField(*sheet, tr("Name of the ward"), m_name);
    addField(*sheet, tr("Time zone"), m_zone);
    addField(*sheet, tr("Shifts"), m_pattern);
    addField(*sheet, tr("Start and name of each shift"), m_starts);
    addField(*sheet, tr("Who walks rounds"), m_people);
    const QString limitsName = fillLimits();
    addField(*sheet, limitsName, m_limits);
    sheet->content().addWidget(m_source);
    m_source->setTone(Tone::Soft);
    const auto showSource
        = [this] { m_source->setText(tr("Source: %1").arg(m_limits->currentData(Qt::ToolTipRole).toString())); };
    connect(m_limits, &QComboBox::currentIndexChanged, this, showSource);
    showSource();
    auto* save = new QPushButton(tr("Save the ward"));
    save->setObjectName(QStringLiteral("saveWardButton"));
    save->setProperty("primary", true);
    sheet->content().addWidget(save, 0, Qt::AlignLeft);
    sheet->content().addWidget(m_said);
    m_said->setObjectName(QStringLiteral("saidLabel"));
    connect(m_pattern, &QComboBox::activated, this, [this] {
        if (const QString starts = m_pattern->currentData().toString(); !starts.isEmpty())
            m_starts->setText(starts);
    });
    connect(save, &QPushButton::clicked, this, &SetupPage::saveWard);
    return sheet;
}

QString SetupPage::fillLimits()
{
    const auto checklist = builtInChecklist(RoundKind::Shift);
    const Item* item = checklist ? itemWithSets(*checklist) : nullptr;
    if (item == nullptr)
        return {};
    for (const LimitSet& set : std::get<MeasureRule>(item->rule).limits)
        m_limits->addItem(m_ward.language().wording(set.name), qs(set.id));
    for (int i = 0; i < m_limits->count(); ++i)
        m_limits->setItemData(i, qs(std::get<MeasureRule>(item->rule).limits[static_cast<std::size_t>(i)].source),
            Qt::ToolTipRole);
    m_limits->setProperty("item", qs(item->id));
    return tr("Limits: %1").arg(m_ward.language().wording(item->label));
}

Sheet* SetupPage::makeLook()
{
    auto* sheet = new Sheet(tr("This computer"));
    m_language->addItem(tr("As the system"), QString());
    for (const LanguageChoice& choice : languageChoices())
        m_language->addItem(choice.name, choice.code);
    m_text->addItem(tr("As the system"), 0.0);
    for (const int percent : {100, 125, 150, 175, 200})
        m_text->addItem(tr("%1 %").arg(percent), percent / 100.0);
    m_scheme->addItems({tr("As the system"), tr("Light"), tr("Dark, for the night shift")});
    m_language->setObjectName(QStringLiteral("languageComboBox"));
    m_text->setObjectName(QStringLiteral("textSizeComboBox"));
    m_scheme->setObjectName(QStringLiteral("schemeComboBox"));
    m_language->setCurrentIndex(std::max(m_language->findData(m_settings.language), 0));
    m_text->setCurrentIndex(std::max(m_text->findData(m_settings.textScale), 0));
    m_scheme->setCurrentIndex(static_cast<int>(m_settings.scheme));
    addField(*sheet, tr("Language"), m_language);
    addField(*sheet, tr("Text size"), m_text);
    addField(*sheet, tr("Light and dark"), m_scheme);
    for (QComboBox* box : {m_language, m_text, m_scheme})
        connect(box, &QComboBox::activated, this, &SetupPage::saveLook);
    return sheet;
}

Sheet* SetupPage::makeDatabase()
{
    auto* sheet = new Sheet(tr("Database"));
    auto* path = new WrapLabel(QDir::toNativeSeparators(qs(m_ward.store().path())), TextRole::Small);
    auto* buttons = new FoldingRow;
    auto* verifyButton = new QPushButton(tr("Verify every record"));
    auto* backupButton = new QPushButton(tr("Back up now"));
    verifyButton->setObjectName(QStringLiteral("verifyButton"));
    backupButton->setObjectName(QStringLiteral("backupButton"));
    buttons->setSpacing(themeOf(*this).space(Space::Near));
    buttons->addWidget(verifyButton);
    buttons->addWidget(backupButton);
    sheet->content().addWidget(path);
    sheet->content().addWidget(buttons);
    sheet->content().addWidget(m_checked);
    connect(verifyButton, &QPushButton::clicked, this, &SetupPage::verify);
    connect(backupButton, &QPushButton::clicked, this, &SetupPage::backup);
    return sheet;
}

void SetupPage::load()
{
    m_zone->setCurrentText(QString::fromLatin1(QTimeZone::systemTimeZoneId()));
    m_starts->setText(m_pattern->itemData(0).toString());
    const auto& view = m_ward.view();
    if (!view)
        return;
    m_name->setText(qs(view->unit.name));
    m_zone->setCurrentText(qs(view->unit.zone));
    m_starts->setText(qs(patternText(view->calendar.pattern())));
    showWhole(*m_starts, themeOf(*this));
    const int known = m_pattern->findData(m_starts->text());
    m_pattern->setCurrentIndex(known >= 0 ? known : m_pattern->count() - 1);
    QStringList people;
    for (const Person& person : m_ward.store().people(m_ward.unit()).value_or(std::vector<Person>()))
        people << qs(person.initials);
    m_people->setText(people.join(QStringLiteral(", ")));
    showWhole(*m_people, themeOf(*this));
    const auto picked = view->adopted.limits.find(m_limits->property("item").toString().toStdString());
    if (picked != view->adopted.limits.end())
        m_limits->setCurrentIndex(std::max(m_limits->findData(qs(picked->second)), 0));
}

void SetupPage::say(const QString& text, bool bad)
{
    m_said->setTone(bad ? Tone::Warning : Tone::Soft);
    m_said->setText(text);
}

void SetupPage::saveWard()
{
    if (m_name->text().trimmed().isEmpty())
        return say(tr("The ward has no name."), true);
    if (typedPeople().empty())
        return say(tr("Nobody is named who walks rounds."), true);
    const auto unit = writeWard();
    if (!unit) {
        say(ErrorText::told(unit.error()), true);
        return;
    }
    say(tr("Saved."), false);
    Q_EMIT unitSaved(*unit);
}

std::vector<Person> SetupPage::typedPeople() const
{
    std::vector<Person> people;
    for (const QString& initials : m_people->text().split(QLatin1Char(','), Qt::SkipEmptyParts)) {
        if (!initials.trimmed().isEmpty())
            people.push_back({.initials = initials.trimmed().toStdString(), .role = {}});
    }
    return people;
}

Result<std::string> SetupPage::writeWard()
{
    const QString name = m_name->text().trimmed();
    const auto zone = TimeZone::named(m_zone->currentText().toStdString());
    const auto pattern = readPattern(m_starts->text().toStdString());
    if (!zone || !pattern)
        return tl::unexpected(zone ? pattern.error() : zone.error());
    const std::vector<Person> people = typedPeople();
    const std::string actor = m_ward.actor().empty() ? people.front().initials : m_ward.actor();
    const std::string id = m_ward.unit().empty() ? idFromName(name) : m_ward.unit();
    const Date today = zone->toLocal(m_ward.now()).date;
    Store& store = m_ward.store();
    const auto written = store.together([&]() -> Result<void> {
        const std::string level = m_ward.view() ? m_ward.view()->unit.level : std::string();
        auto done = store.describeUnit({.id = id, .name = name.toStdString(), .zone = zone->name(), .level = level}, actor);
        if (done && !(m_ward.view() && m_ward.view()->calendar.pattern() == *pattern))
            done = store.setPattern(id, {.from = today, .pattern = *pattern}, actor);
        if (done)
            done = store.setPeople(id, people, actor);
        return done ? writeLimits(id, actor, today) : done;
    });
    if (!written)
        return tl::unexpected(written.error());
    return id;
}

Result<void> SetupPage::writeLimits(const std::string& unit, const std::string& actor, Date today)
{
    ChosenLimits limits;
    if (m_limits->currentIndex() > 0)
        limits[m_limits->property("item").toString().toStdString()] = m_limits->currentData().toString().toStdString();
    for (const RoundKind use : {RoundKind::Shift, RoundKind::PreBirth, RoundKind::AfterUse}) {
        const auto document = parseJson(builtInChecklistText(use));
        if (!document)
            return tl::unexpected(document.error());
        const auto now = m_ward.store().checklistFor(unit, use, today);
        const auto builtIn = readChecklist(*document);
        if (now && builtIn && now->checklist == *builtIn && now->limits == limits)
            continue;
        if (auto done = m_ward.store().adopt(unit, {.from = today, .document = *document, .limits = limits}, actor); !done)
            return done;
    }
    return {};
}

void SetupPage::saveLook()
{
    m_settings.language = m_language->currentData().toString();
    m_settings.textScale = m_text->currentData().toDouble();
    m_settings.scheme = static_cast<SchemeChoice>(m_scheme->currentIndex());
    Q_EMIT settingsChanged(m_settings);
}

void SetupPage::verify()
{
    const auto verified = m_ward.store().verify();
    const bool bad = !verified || verified->fault;
    m_checked->setTone(bad ? Tone::Warning : Tone::Soft);
    if (!verified)
        m_checked->setText(ErrorText::sentence(verified.error()) + QLatin1Char(' ') + qs(verified.error().message));
    else if (verified->fault)
        m_checked->setText(tr("%1: %2").arg(qs(verified->fault->where), qs(verified->fault->what)));
    else
        m_checked->setText(tr("%n record(s) verified: every signature holds and nothing was changed.", nullptr,
            static_cast<int>(verified->records)));
}

void SetupPage::backup()
{
    const QFileInfo file(qs(m_ward.store().path()));
    const QString to = file.dir().filePath(QStringLiteral("%1-%2.backup")
                                               .arg(file.completeBaseName(),
                                                   QDateTime::fromMSecsSinceEpoch(toMs(m_ward.now()), Qt::UTC)
                                                       .toString(QStringLiteral("yyyyMMdd-HHmmss"))));
    const auto done = m_ward.store().backup(to.toStdString());
    m_checked->setTone(done ? Tone::Soft : Tone::Warning);
    m_checked->setText(done ? tr("Backed up to %1. Keep a copy away from this computer.").arg(QDir::toNativeSeparators(to))
                            : ErrorText::sentence(done.error()) + QLatin1Char(' ') + qs(done.error().message));
}

}
