#!/usr/bin/python3
"""A small unit and its readings as several programs write them: openpyxl, xlwt and odfpy, and LibreOffice from the first.
    src/bench/writers.py FOLDER
"""
import datetime, os, subprocess, sys

folder = sys.argv[1]
os.makedirs(folder, exist_ok=True)

HARNESS = {
    "Wires": [["Wire", "From", "From Pin", "To", "To Pin", "Gauge", "Color", "Length", "Signal", "Note"]]
    + [[f"W{i}", "J1", i, "P1", i, 20, "RED", "2.5 m", f"SIG {i}", ""] for i in range(1, 13)]
    + [["W13", "J1", 13, "S1", "COM", "0.75 mm²", "BLU", "1,2 m", "LOCK", "two\nlines"],
       ["W14", "S1", "NC", "P1", 13, 20, "GRN", "3 m", "OPEN & SHUT", "_x0041_"]],
    "Items": [["Ref", "Kind", "Part"], ["J1", "connector", "A"], ["P1", "connector", "B"], ["S1", "switch", "C"]],
    "Switches": [["Ref", "State", "Pin", "To Pin"], ["S1", "OFF", "COM", "NC"], ["S1", "ON", "", ""]],
    "Links": [["Ref", "Pin", "To Pin"], ["P1", 13, 12]],
    "Limits": [["Name", "Value", "Unit"], ["temperature", 20, "°C"], ["insulation min", 100, "MΩ"]],
    "Header": [["Name", "Value"], ["title", "Bridge box"], ["drawing", "HSB-9"], ["revision", "A"]],
}
READINGS = {
    "Continuity": [["Step", "From", "From Pin", "To", "To Pin", "State", "Reading", "Unit", "Note"]]
    + [[i, "J1", i, "P1", i, "", 0.08, "Ω", ""] for i in range(1, 12)]
    + [[12, "J1", 12, "P1", 12, "", "OL", "", ""], [13, "J1", 13, "P1", 13, "", "0,11", "ohm", ""],
       [14, "J1", 13, "P1", 13, "S1=ON", ">20 M", "", "line\nbreak"]],
    "Insulation": [["Step", "From", "From Pin", "To", "To Pin", "Volts", "Seconds", "Reading", "Unit"]]
    + [[i, "J1", i, "REST", "", 500, 60, 550, "MΩ"] for i in range(1, 12)],
    "Job": [["Name", "Value"], ["serial number", "0418"], ["revision", "A"], ["instrument number", "T-118"],
            ["date", datetime.date(2027, 3, 31)], ["calibration due", datetime.date(2027, 9, 30)]],
}


def openpyxl_book(sheets, path):
    import openpyxl
    from openpyxl.comments import Comment
    from openpyxl.styles import Font, PatternFill
    book = openpyxl.Workbook()
    book.remove(book.active)
    for name, rows in sheets.items():
        sheet = book.create_sheet(name)
        for row in rows:
            sheet.append(row)
        sheet["A2"].comment = Comment("seen", "R. Adeyemi")
        sheet["B2"].font = Font(color="FFFF0000")
        sheet["A3"].fill = PatternFill("solid", fgColor="FFFFFF00")
        sheet.row_dimensions[3].hidden = True
        sheet.auto_filter.ref = "A1:C5"
    book.save(path)


def xlwt_book(sheets, path):
    import xlwt
    book = xlwt.Workbook()
    day = xlwt.easyxf(num_format_str="YYYY-MM-DD")
    red = xlwt.easyxf("font: colour red")
    for name, rows in sheets.items():
        sheet = book.add_sheet(name)
        for r, row in enumerate(rows):
            for c, value in enumerate(row):
                if value == "":
                    continue
                if isinstance(value, datetime.date):
                    sheet.write(r, c, value, day)
                elif r == 1 and c == 1:
                    sheet.write(r, c, value, red)
                else:
                    sheet.write(r, c, value)
        sheet.row(2).hidden = True
    book.save(path)


def odfpy_book(sheets, path):
    from odf.opendocument import OpenDocumentSpreadsheet
    from odf.table import Table, TableCell, TableRow
    from odf.text import P
    from odf.office import Annotation
    book = OpenDocumentSpreadsheet()
    for name, rows in sheets.items():
        table = Table(name=name)
        for r, row in enumerate(rows):
            line = TableRow()
            for c, value in enumerate(row):
                if value == "":
                    cell = TableCell()
                elif isinstance(value, datetime.date):
                    cell = TableCell(valuetype="date", datevalue=value.isoformat())
                elif isinstance(value, (int, float)):
                    cell = TableCell(valuetype="float", value=str(value))
                else:
                    cell = TableCell(valuetype="string")
                    if r == 1 and c == 0:
                        note = Annotation()
                        note.addElement(P(text="seen"))
                        cell.addElement(note)
                    for part in str(value).split("\n"):
                        cell.addElement(P(text=part))
                line.addElement(cell)
            table.addElement(line)
        book.spreadsheet.addElement(table)
    book.save(path)


for name, sheets in (("harness", HARNESS), ("readings", READINGS)):
    openpyxl_book(sheets, f"{folder}/openpyxl-{name}.xlsx")
    xlwt_book(sheets, f"{folder}/xlwt-{name}.xls")
    odfpy_book(sheets, f"{folder}/odfpy-{name}.ods")
    for form in ("xlsx", "xls", "ods"):
        subprocess.run(["soffice", "--headless", "--convert-to", form, "--outdir", f"{folder}/office",
                        f"{folder}/openpyxl-{name}.xlsx"], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, timeout=120)
        made = f"{folder}/office/openpyxl-{name}.{form}"
        if os.path.exists(made):
            os.replace(made, f"{folder}/office-{name}.{form}")
    os.makedirs(f"{folder}/csv-{name}", exist_ok=True)
    for sheet, rows in sheets.items():
        import csv
        with open(f"{folder}/csv-{name}/{sheet.lower()}.csv", "w", newline="", encoding="utf-8") as out:
            csv.writer(out).writerows([[str(v) for v in row] for row in rows])
if os.path.isdir(f"{folder}/office") and not os.listdir(f"{folder}/office"):
    os.rmdir(f"{folder}/office")
