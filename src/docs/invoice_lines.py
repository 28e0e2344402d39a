"""Prints the lines of an invoice from the records of a job's sheets: python3 invoice_lines.py 2402-1.json 2402-2.json"""
import json
import sys

records = [json.load(open(name, encoding="utf-8")) for name in sys.argv[1:]]
first = records[0]
sheet, vehicle = first["sheet"], first["vehicle"]
print(f"Job {sheet['job']} of {sheet['date']}, {vehicle.get('plate', vehicle['name'])}")
for work in first["works"]:
    print(f"work;{work};1")
print(f"time;minutes, expected;{sum(record['time']['minutes'][1] for record in records)}")
for record in records:
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
