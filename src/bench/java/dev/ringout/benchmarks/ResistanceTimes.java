package dev.ringout.benchmarks;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Resistances;
import dev.ringout.harness.SwitchState;
import dev.ringout.support.ResistorUnit;
import java.util.Locale;
import java.util.Random;

/** How long what a meter should read takes: long chains, stars, loops of many points. */
public final class ResistanceTimes {
  private ResistanceTimes() {}

  /** No arguments. */
  public static void main(String[] args) {
    ResistorUnit chain = new ResistorUnit();
    ResistorUnit shortChain = new ResistorUnit();
    ResistorUnit star = new ResistorUnit();
    for (int i = 1; i <= 100_000; i++) {
      chain.resistor("" + (i - 1), "" + i, 1);
      star.resistor("m", "" + i, 1);
      if (i <= 100) {
        shortChain.resistor("" + (i - 1), "" + i, 1);
      }
    }
    time("chain of 100 points", shortChain, 1_000_000);
    time("chain of 100,000 points", chain, 1_000_000);
    time("star of 100,000 points", star, 1_000_000);
    time("mesh of 200 points, one loop", mesh(10, 20), 1_000_000);
    time("mesh of 2,500 points, one loop", mesh(50, 50), 2_000);
    ResistorUnit ring = new ResistorUnit();
    for (int i = 0; i < 20_000; i++) {
      ring.resistor("" + i, "" + (i + 1) % 20_000, 1);
    }
    time("ring of 20,000 points", ring, 1_000);
  }

  private static ResistorUnit mesh(int columns, int rows) {
    ResistorUnit mesh = new ResistorUnit();
    for (int x = 0; x < columns; x++) {
      for (int y = 0; y < rows; y++) {
        if (x + 1 < columns) {
          mesh.resistor(x + "." + y, (x + 1) + "." + y, 1);
        }
        if (y + 1 < rows) {
          mesh.resistor(x + "." + y, x + "." + (y + 1), 1);
        }
      }
    }
    return mesh;
  }

  private static void time(String what, ResistorUnit unit, int readings) {
    Circuit circuit = unit.circuit();
    circuit.normal();
    Resistances resistances = ResistorUnit.resistances(circuit);
    Random random = new Random(1);
    long start = System.nanoTime();
    resistances.between(0, circuit.size() - 1, SwitchState.normal());
    double first = (System.nanoTime() - start) / 1e6;
    start = System.nanoTime();
    for (int i = 0; i < readings; i++) {
      resistances.between(
          random.nextInt(circuit.size()), random.nextInt(circuit.size()), SwitchState.normal());
    }
    double each = (System.nanoTime() - start) / 1e3 / readings;
    System.out.println(
        String.format(
            Locale.ROOT, "%-32s first %8.1f ms, then %9.2f µs a reading", what, first, each));
  }
}
