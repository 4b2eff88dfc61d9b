// SPDX-License-Identifier: MIT
#include "ui/pages/round/cards/answereditor.h"

#include "ui/pages/round/cards/confirmeditor.h"
#include "ui/pages/round/cards/counteditor.h"
#include "ui/pages/round/cards/cylindereditor.h"
#include "ui/pages/round/cards/kiteditor.h"
#include "ui/pages/round/cards/measureeditor.h"
#include "ui/pages/round/cards/sinceeditor.h"
#include "ui/pages/round/cards/stepseditor.h"
#include "ui/text/reasontext.h"

namespace cradlepost {

AnswerEditor::AnswerEditor(const Item& item, const CardScene& scene, QWidget* parent)
    : QWidget(parent)
    , m_item(item)
    , m_scene(scene)
{
}

void AnswerEditor::setActive(bool active)
{
    m_active = active;
    active ? begin() : end();
}

QString AnswerEditor::minusLabel() const { return tr("Gap"); }

QString AnswerEditor::limits() const { return ReasonText(m_scene.language).limits(m_item, m_scene.limits); }

AnswerEditor* makeEditor(const Item& item, const CardScene& scene, QWidget* parent)
{
    switch (item.kind()) {
    case ItemKind::Measure:
        return new MeasureEditor(item, scene, parent);
    case ItemKind::Since:
        return new SinceEditor(item, scene, parent);
    case ItemKind::Steps:
        return new StepsEditor(item, scene, parent);
    case ItemKind::Count:
        return new CountEditor(item, scene, parent);
    case ItemKind::Kit:
        return new KitEditor(item, scene, parent);
    case ItemKind::Cylinder:
        return new CylinderEditor(item, scene, parent);
    case ItemKind::Confirm:
        break;
    }
    return new ConfirmEditor(item, scene, parent);
}

}
