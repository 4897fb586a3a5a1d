package dev.ringout.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

class PrecedenceTest {
  private static String turns(Precedence order) {
    return order.turns().stream().map(turn -> String.join("+", turn)).toList().toString();
  }

  @Test
  void what_must_come_first_does_and_the_rest_is_in_the_order_given() {
    Precedence order = new Precedence(Comparator.naturalOrder());
    List.of("d", "b", "a").forEach(order::add);
    order.before("d", "a");
    order.before("c", "c");
    assertEquals("[b, c, d, a]", turns(order));
  }

  @Test
  void what_must_come_before_each_other_comes_together() {
    Precedence order = new Precedence(Comparator.reverseOrder());
    order.before("a", "b");
    order.before("b", "c");
    order.before("c", "a");
    order.before("c", "d");
    order.before("e", "a");
    assertEquals("[e, c+b+a, d]", turns(order));
  }
}
