package dev.ringout.page;

import dev.ringout.bench.Bench;
import dev.ringout.bench.Refused;
import dev.ringout.bench.ShopFloor;
import dev.ringout.json.BenchFloorJson;
import dev.ringout.people.Act;
import dev.ringout.serve.Reply;
import dev.ringout.store.StoreTrouble;
import java.time.LocalDate;

/** What goes on at all benches of a shop. */
final class FloorRoutes {
  private final Bench bench;
  private final UnitsOfPage units;
  private final ShopFloor floor;

  FloorRoutes(Bench bench, UnitsOfPage units) {
    this.bench = bench;
    this.units = units;
    this.floor = new ShopFloor(bench.tests());
  }

  void in(Routes routes) {
    routes.get(Act.OVERSEE, "/api/shop", (ask, names) -> shop());
  }

  private Reply shop() throws Refused {
    LocalDate today = bench.setup().ticks().now().atZone(bench.setup().zone()).toLocalDate();
    try {
      return Reply.json(200, BenchFloorJson.write(floor.look(units.all(), today)));
    } catch (StoreTrouble e) {
      throw Refused.by(e);
    }
  }
}
