package dev.ringout.sheet;

import java.util.List;

/**
 * A sheet to be written: a row of headings and rows of text.
 *
 * @param rows cells as text, so that no spreadsheet makes a date of a pin
 */
public record OutSheet(String name, List<String> headings, List<List<String>> rows) {}
