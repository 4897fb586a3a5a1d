package dev.ringout.words;

import dev.ringout.diagnose.Move;
import dev.ringout.units.Text;
import java.util.List;
import java.util.stream.Collectors;

/** Where wire ends sit, in words. */
final class MoveWords {
  private static final int MOST_MOVES = 6;

  private MoveWords() {}

  static String someMoves(List<Move> moves) {
    int more = moves.size() - MOST_MOVES;
    return moves(moves.subList(0, Math.min(moves.size(), MOST_MOVES)))
        + (more > 0 ? Text.of(", and so on for %d more", more) : "");
  }

  static boolean areCrossed(List<Move> moves) {
    return moves.size() == 2
        && moves.get(0).from().equals(moves.get(1).to())
        && moves.get(0).to().equals(moves.get(1).from());
  }

  static String crossedAt(List<Move> moves) {
    Move first = moves.get(0);
    return Text.of("%s (%s and %s)", first.from().ref(), first.from().pin(), first.to().pin());
  }

  static String moves(List<Move> moves) {
    return moves.stream()
        .map(
            move ->
                Text.of("%s sits in %s instead of %s", move.wire().name(), move.to(), move.from()))
        .collect(Collectors.joining(", "));
  }
}
