package dev.ringout.imports.kbl;

import java.util.List;

/** A connection whose references hold, before its items are known to be one of a name each. */
record Draft(Element connection, Element wire, List<Contact> contacts) {}
