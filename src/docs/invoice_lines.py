"""Prints the lines of an invoice from the records of a job's sheets, in order:
python3 invoice_lines.py 2402-1.json 2402-2.json 2402-3.json"""
import json
import sys

records = []
for name in sys.argv[1:]:
    with open(name, encoding="utf-8") as file:
        records.append(json.load(file))

sheet, vehicle = records[0]["sheet"], records[0]["vehicle"]
if len(records) != sheet.get("stages", 1):
    sys.exit(f"job {sheet['job']} has {sheet.get('stages', 1)} sheets: give the records of all")
print(f"Job {sheet['job']} of {sheet['date']}, {vehicle.get('plate', vehicle['name'])}")
for work in records[0]["work"]:
    print(f"work;{work['procedure']};{work['title']}, {' and '.join(work['places'])};1")
print(f"time;;minutes, expected;{sum(record['time']['minutes'][1] for record in records)}")
for record in records:
    for part in record["parts"]:
        print(f"part;{part.get('number', '')};{part['part']};{part['count']}")
supplies = {one["words"]: one for record in records for one in record["supplies"]}
for words, one in supplies.items():
    amount = one.get("capacity", {"value": "", "unit": ""})
    print(f"supply;;{words};{amount['value']} {amount['unit']}".rstrip())
for record in records:
    for open_item in record["open"]:
        print(f"open;;{open_item['text']};")
    for again in record["rechecks"]:
        due = again.get("dueAt", again["after"])
        print(f"re-check;;rows {', '.join(map(str, again['rows']))} at {due['value']} {due['unit']};")
