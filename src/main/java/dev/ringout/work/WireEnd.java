package dev.ringout.work;

import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.standards.CrimpTools.Setting;
import java.util.Optional;

/**
 * One end of a wire, seen from the item that it goes into.
 *
 * @param here where it goes in
 * @param there where the wire goes
 * @param contact the contact for this end: as listed, else the cavity's; empty where neither is
 * @param tool the crimp tool and how it is set, where the tables know the contact
 * @param strip how far it is stripped, or empty
 * @param marker the text of its sleeve
 */
public record WireEnd(
    Wire wire,
    Point here,
    Point there,
    String contact,
    Optional<Setting> tool,
    String strip,
    String marker) {}
