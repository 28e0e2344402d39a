"""Prints the lines of an invoice from the record of a sheet: python3 invoice_lines.py 2402.json"""
import json
import sys

with open(sys.argv[1], encoding="utf-8") as file:
    record = json.load(file)

sheet, vehicle = record["sheet"], record["vehicle"]
print(f"Job {sheet['job']} of {sheet['date']}, {vehicle.get('plate', vehicle['name'])}")
for work in record["works"]:
    print(f"work;{work};1")
print(f"time;minutes, expected;{record['time']['minutes'][1]}")
for part in record["parts"]:
    print(f"part;{part['part']};{part['count']}")
for consumable in record["consumables"]:
    print(f"consumable;{consumable};")
for check in record["checks"]:
    if "keepsOpen" in check:
        print(f"open;{check['keepsOpen']};")
odometer = vehicle.get("odometer")
for row in record["torque"]:
    if odometer and row.get("recheck", {}).get("unit") == odometer["unit"]:
        due = odometer["value"] + row["recheck"]["value"]
        print(f"re-check;{row['words']} at {due} {odometer['unit']};")
