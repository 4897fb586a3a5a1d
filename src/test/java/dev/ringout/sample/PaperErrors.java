package dev.ringout.sample;

import java.util.List;

/** A revision of the bridge's paper in which everything that a review looks for went wrong once. */
final class PaperErrors {
  private final Workbook paper = new Workbook();
  private int number;

  PaperErrors() {
    paper
        .sheet("Header", "Name", "Value")
        .sheet(
            "Wires",
            "Wire",
            "From",
            "From Pin",
            "To",
            "To Pin",
            "Gauge",
            "Wire Type",
            "Color",
            "Length (ft)",
            "Signal",
            "Cable",
            "Group",
            "From Contact",
            "To Contact",
            "Note")
        .sheet("Items", "Ref", "Kind", "Part", "Arrangement", "Mates", "Note")
        .sheet("Pins", "Ref", "Pin", "Size", "Note")
        .sheet("Links", "Ref", "Pin", "To Pin", "Note")
        .sheet("Parts", "Ref", "Pin", "To Pin", "Kind", "Ohms")
        .sheet("Loads", "Name", "From", "From Pin", "To", "To Pin", "Amps", "Volts", "Wire C")
        .sheet(
            "Crimps",
            "Wire",
            "Contact",
            "Tool",
            "Positioner",
            "Setting",
            "Strip mm",
            "Pull lbf",
            "Standard");
    paper.row("Header", "title", "Harrow Sluice swing bridge, control junction box JB5");
    paper.row("Header", "drawing", "HSB-2215");
    paper.row("Header", "revision", "O");
    items();
    wires();
    loadsAndCrimps();
  }

  private void items() {
    paper.row("Items", "J1", "connector", "", "17-26", "P1", "console");
    paper.row("Items", "P1", "connector", "", "17-26", "J1", "cable C1");
    paper.row("Items", "J2", "connector", "", "15-97", "", "pivot");
    paper.row("Items", "J5", "connector", "", "", "", "spare deck lights, insert unknown");
    paper.row("Items", "TB1", "terminal strip", "", "", "", "upper rail");
    paper.row("Items", "SP1", "splice", "red butt splice", "", "", "behind TB1");
    paper.row("Items", "DS1", "lamp", "", "", "", "east landing");
    for (String pin : List.of("A", "B", "C", "D", "E", "F", "G", "H")) {
      paper.row("Pins", "J2", pin, "20", "");
    }
    paper.row("Pins", "TB1", "1", "#8", "");
    paper.row("Pins", "TB1", "2", "#8", "");
    paper.row("Parts", "DS1", "1", "2", "lamp", "40");
  }

  /** Cells: from, to, gauge, then column=value. */
  private void wire(String from, String to, String gauge, String... more) {
    number++;
    String[] columns = {
      "Wire Type",
      "Color",
      "Length (ft)",
      "Signal",
      "Cable",
      "Group",
      "From Contact",
      "To Contact",
      "Note",
      "Wire"
    };
    String[] values = new String[columns.length];
    java.util.Arrays.fill(values, "");
    values[columns.length - 1] = "W" + (200 + number);
    for (String one : more) {
      String[] parts = one.split("=", 2);
      values[List.of(columns).indexOf(parts[0])] = parts[1];
    }
    String[] start = from.split("-", 2);
    String[] end = to.split("-", 2);
    paper.row(
        "Wires", values[9], start[0], start[1], end[0], end[1], gauge, values[0], values[1],
        values[2], values[3], values[4], values[5], values[6], values[7], values[8]);
  }

  private void wires() {
    wire("J1-A", "TB1-1", "20", "Signal=24V", "To Contact=red ring #8", "Length (ft)=3");
    wire("J1-B", "TB1-2", "20", "Signal=24V", "To Contact=red ring #10", "Length (ft)=3");
    wire("J1-C", "TB1-3", "14", "Signal=0V", "To Contact=red ring #8");
    wire("J1-D", "J2-A", "16", "Signal=SPAN OPEN");
    wire("J1-E", "J2-B", "20", "Signal=SPAN CLOSE", "From Contact=M39029/58-364");
    wire("J1-F", "J2-C", "20", "Signal=CREEP");
    wire("J1-F", "TB1-4", "20", "Signal=CREEP");
    wire("J1-d", "J2-D", "20", "Signal=STOP");
    wire("J1-G", "J2-E", "20", "Signal=LOCK IN", "Wire=W204");
    wire("J1-H", "J2-F", "20", "Signal=HORN");
    wire("J2-F", "J1-H", "20", "Signal=HORN");
    wire("J1-J", "TB1-5", "20", "Signal=LAMP", "Wire Type=solid hook-up");
    wire("J1-K", "TB1-6", "24", "Signal=BELL", "Wire Type=AS22759/16-12-0");
    wire("J2-G", "TB1-7", "12", "Signal=BRAKE", "Wire Type=AS22759/16-12-0");
    wire("TB1-8", "J1-L", "20", "Signal=CLEAR");
    wire("TB1-8", "J1-M", "20", "Signal=CLEAR");
    wire("TB1-8", "J1-N", "20", "Signal=CLEAR");
    wire("TB1-8", "J1-P", "20", "Signal=CLEAR");
    wire("TB1-8", "J2-H", "22", "Signal=READY");
    wire("TB1-9", "SP1-1", "20", "Signal=GATE");
    wire("SP1-1", "TB1-10", "20", "Signal=GATE");
    wire("SP1-1", "TB1-11", "20", "Signal=GATE");
    wire("J1-R", "TB1-12", "22", "Cable=C4", "Group=PAIR 1", "Signal=ROTOR +");
    wire("J1-a", "TB1-13", "22", "Cable=C4", "Group=PAIR 1", "Signal=ROTOR -");
    wire("J1-S", "TB1-14", "22", "Signal=ROTOR SHIELD", "Note=shield, one end only");
    wire("J5-A", "TB1-15", "20", "Signal=DECK 1");
    wire("J5-B", "TB1-16", "20", "Signal=DECK 2");
    wire("J5-C", "TB1-17", "20", "Signal=DECK 3");
    wire("J5-I", "TB1-18", "20", "Signal=DECK 4");
    wire("J5-1", "TB1-19", "20", "Signal=DECK 5");
    wire("TB1-20", "DS1-1", "20", "Signal=EAST LAMP");
    wire("TB1-21", "ZZ1-?", "20", "Signal=BUZZER");
    wire("P1-A", "P11-1", "20", "Signal=24V", "Cable=C1");
    wire("P1-B", "P11-2", "20", "Signal=0V", "Cable=C1");
    wire("J1-T", "TB1-22", "10", "Signal=SLEW", "Length (ft)=60");
    wire("J1-U", "TB1-23", "20", "Signal=HEATER", "Wire Type=AS22759/16-20-0");
    wire("J1-V", "P11-3", "20", "Signal=DOOR", "Color=WHT/GNR");
    wire("J1-W", "P11-4", "20", "Signal=DOOR");
  }

  private void loadsAndCrimps() {
    paper.row("Loads", "slew brake", "J1", "T", "TB1", "22", "17", "28", "105");
    paper.row("Loads", "deck heater", "J1", "U", "TB1", "23", "5", "690", "105");
    paper.row("Crimps", "W226", "20", "M22520/1-01", "", "4", "4.5", "14", "UL 486A");
    paper.row("Crimps", "W227", "20", "M22520/1-01", "", "4", "6.5", "", "");
    paper.row("Crimps", "W228", "20", "M22520/1-01", "", "3", "", "11", "UL 486A");
  }

  Workbook paper() {
    return paper;
  }
}
