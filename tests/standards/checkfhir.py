# SPDX-License-Identifier: MIT
"""checkfhir.py SCHEMA.gz BUNDLE...: HL7 FHIR R4 bundles against the published JSON schema, and against each other.

Beside the schema: every reference leads to an entry, every answer fits a question of its type, counts of a report fit
each other and its score, populations are those of the Measure, and nobody is a patient. Then it breaks each resource in
ways that must be refused, so that a schema that lets everything pass is noticed.
"""
import copy
import gzip
import json
import sys
import warnings

warnings.simplefilter("ignore")
import jsonschema  # noqa: E402

VALUES = {"choice": "valueCoding", "string": "valueString", "integer": "valueInteger", "date": "valueDate",
          "dateTime": "valueDateTime", "boolean": "valueBoolean", "quantity": "valueQuantity", "decimal": "valueDecimal"}


class Checker:
    def __init__(self, path):
        schema = json.loads(gzip.open(path).read())
        resolver = jsonschema.RefResolver.from_schema(schema)
        self.validators = {}
        self.make = lambda name: jsonschema.Draft6Validator({"$ref": f"#/definitions/{name}"}, resolver=resolver)

    def faults(self, resource, name=None):
        name = name or resource["resourceType"]
        validator = self.validators.setdefault(name, self.make(name))
        return [f"{name}: {'/'.join(map(str, e.absolute_path))}: {e.message[:120]}" for e in validator.iter_errors(resource)]


def questions(items, found=None):
    found = {} if found is None else found
    for item in items:
        assert item["linkId"] not in found, f"linkId {item['linkId']} twice"
        found[item["linkId"]] = item
        questions(item.get("item", []), found)
    return found


def answer_faults(items, asked):
    for item in items:
        question = asked.get(item["linkId"])
        if question is None:
            yield f"answer to {item['linkId']}, which nobody asked"
            continue
        if question["type"] == "group":
            if "answer" in item:
                yield f"{item['linkId']} is a group and has an answer"
            yield from answer_faults(item.get("item", []), {q["linkId"]: q for q in question["item"]})
            continue
        for answer in item["answer"]:
            name = VALUES[question["type"]]
            if set(answer) != {name}:
                yield f"{item['linkId']}: {set(answer)} instead of {name}"
            elif name == "valueCoding" and {"valueCoding": answer[name]} not in question["answerOption"]:
                yield f"{item['linkId']}: {answer[name]} is no option"


def counts(group):
    return {p["code"]["coding"][0]["code"]: p["count"] for p in group["population"]}


def tally_faults(group, where):
    c = counts(group)
    if not 0 <= c["numerator"] <= c["denominator"] == c["initial-population"]:
        yield f"{where}: counts {c}"
    score = group.get("measureScore")
    if (score is None) != (c["denominator"] == 0):
        yield f"{where}: score {score} of {c}"
    if score and abs(score["value"] - c["numerator"] / c["denominator"]) > 1e-12:
        yield f"{where}: score {score} of {c}"


def report_faults(report, measure):
    defined = [g["code"]["coding"][0]["code"] for g in measure["group"]]
    reported = [g["code"]["coding"][0]["code"] for g in report["group"]]
    if defined != reported:
        yield f"groups {reported} of {defined}"
    share = measure["scoring"]["coding"][0]["code"] == "proportion"
    for group, definition in zip(report["group"], measure["group"]):
        wanted = [p["code"]["coding"][0]["code"] for p in definition["population"]]
        if list(counts(group)) != wanted:
            yield f"populations {list(counts(group))} of {wanted}"
        if share:
            yield from tally_faults(group, group["code"]["coding"][0]["code"])
            strata = [s for f in group.get("stratifier", []) for s in f["stratum"]]
            for stratum in strata:
                yield from tally_faults(stratum, "stratum")
            if strata:
                for name, total in counts(group).items():
                    if sum(counts(s)[name] for s in strata) != total:
                        yield f"strata do not add up to {total} {name}"


def references(value):
    if isinstance(value, dict):
        for name, one in value.items():
            if name == "reference":
                yield one
            else:
                yield from references(one)
    elif isinstance(value, list):
        for one in value:
            yield from references(one)


def codings(value):
    if isinstance(value, dict):
        if "system" in value and "code" in value and "value" not in value:
            yield value
        for one in value.values():
            yield from codings(one)
    elif isinstance(value, list):
        for one in value:
            yield from codings(one)


def bundle_faults(checker, bundle):
    resources = [e["resource"] for e in bundle["entry"]]
    shell = dict(bundle, entry=[dict(e, resource=None) for e in bundle["entry"]])
    for entry in shell["entry"]:
        del entry["resource"]
    yield from checker.faults(shell, "Bundle")
    names = {}
    for entry, resource in zip(bundle["entry"], resources):
        yield from checker.faults(resource)
        name = f"{resource['resourceType']}/{resource['id']}"
        if name in names or not entry["fullUrl"].endswith("/" + name):
            yield f"{name} is there twice or under another name"
        names[name] = resource
        if resource["resourceType"] in ("Questionnaire", "Measure"):
            names[resource["url"] + "|" + resource["version"]] = resource
    words = {}
    for coding in codings(bundle):
        display = coding.get("display", "")
        if not display or display != words.setdefault((coding["system"], coding["code"]), display):
            yield f"code {coding['code']} of {coding['system']} is not in the same words everywhere: '{display}'"
    if "Patient" in json.dumps(bundle) or "Practitioner" in json.dumps(bundle):
        yield "somebody is named"
    for resource in resources:
        for reference in references(resource):
            if reference not in names:
                yield f"{reference} is not in the bundle"
        kind = resource["resourceType"]
        if kind == "QuestionnaireResponse":
            asked = names[resource["questionnaire"]]["item"]
            questions(asked)
            yield from answer_faults(resource["item"], {q["linkId"]: q for q in asked})
        elif kind == "MeasureReport":
            yield from report_faults(resource, names[resource["measure"]])


def breakages(resource):
    """The resource broken in ways that the specification forbids."""
    def broken(change):
        other = copy.deepcopy(resource)
        change(other)
        return other
    yield broken(lambda r: r.update(nonsense=1))
    kind = resource["resourceType"]
    if kind == "MeasureReport":
        yield broken(lambda r: r.update(status="finished"))
        yield broken(lambda r: r["group"][0]["population"][0].update(count="8"))
        yield broken(lambda r: r["period"].update(start="12 October"))
    if kind == "Questionnaire":
        yield broken(lambda r: r["item"][0].update(type="yes-no"))
        yield broken(lambda r: r["item"][1]["item"][0].update(linkId=5))
    if kind == "QuestionnaireResponse":
        yield broken(lambda r: r.update(status="done"))
        yield broken(lambda r: r["item"][0]["item"][0]["answer"][0].update(valueDate=7))
    if kind == "Measure":
        yield broken(lambda r: r["group"][0]["population"][0].pop("criteria"))
    if kind == "Location":
        yield broken(lambda r: r.update(mode="room"))


def main(schema, *paths):
    checker = Checker(schema)
    failed = 0
    for path in paths:
        bundle = json.load(open(path, encoding="utf-8"))
        faults = list(bundle_faults(checker, bundle))
        tried = {}
        for entry in bundle["entry"]:
            kind = entry["resource"]["resourceType"]
            if kind in tried:
                continue
            tried[kind] = 0
            for other in breakages(entry["resource"]):
                tried[kind] += 1
                if not checker.faults(other):
                    faults.append(f"a broken {kind} was let pass")
        kinds = [e["resource"]["resourceType"] for e in bundle["entry"]]
        print(path.rsplit("/", 1)[-1] + ":", ", ".join(f"{kinds.count(k)} {k}" for k in tried),
              f"; {sum(tried.values())} broken ones refused; {len(faults)} faults")
        for fault in faults[:20]:
            print("  " + fault)
        failed += len(faults)
    sys.exit(1 if failed else 0)


main(*sys.argv[1:])
