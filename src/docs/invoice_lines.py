"""Prints the lines of an invoice from the records of a job's sheets, in order:
python3 invoice_lines.py 2402-1.json 2402-2.json"""
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
for work in records[0]["works"]:
    print(f"work;{work};1")
print(f"time;minutes, expected;{sum(record['time']['minutes'][1] for record in records)}")
for record in records:
    for part in record["parts"]:
        print(f"part;{part['part']};{part['count']}")
for consumable in dict.fromkeys(one for record in records for one in record["consumables"]):
    print(f"consumable;{consumable};")
for record in records:
    for check in record["checks"]:
        if "keepsOpen" in check:
            print(f"open;{check['keepsOpen']};")
odometer = vehicle.get("odometer")
for row in (row for record in records for row in record["torque"]):
    if odometer and row.get("recheck", {}).get("unit") == odometer["unit"]:
        due = odometer["value"] + row["recheck"]["value"]
        print(f"re-check;{row['words']} at {due} {odometer['unit']};")
