package dev.ringout.words;

import dev.ringout.revision.ReworkStep;
import dev.ringout.units.Text;

/** What is to be done at the bench, in words. */
final class StepWords implements ReworkStep.Cases<String> {
  @Override
  public String disconnect(ReworkStep.Disconnect step) {
    return step.next().isPresent()
        ? Text.of(
            "take %s off %s; cap it and tag it \"for %s\"",
            step.wire(), step.at(), step.next().get())
        : Text.of("take %s off %s", step.wire(), step.at());
  }

  @Override
  public String connect(ReworkStep.Connect step) {
    return step.from().isPresent()
        ? Text.of(
            "put %s, from %s, on %s%s",
            step.wire(),
            step.from().get(),
            step.at(),
            step.newContact().isEmpty() ? "" : ", with a new contact " + step.newContact())
        : Text.of("put the new %s on %s", step.wire(), step.at());
  }

  @Override
  public String pull(ReworkStep.Pull step) {
    return Text.of(
        "draw out %s, or cut both its ends off so that nobody uses it again", step.wire());
  }

  @Override
  public String stow(ReworkStep.Stow step) {
    return Text.of(
        "%s stays in cable %s: cap and tie back both ends, tag them \"spare\"",
        step.wire(), step.cable());
  }

  @Override
  public String takeJumperOff(ReworkStep.TakeJumperOff step) {
    return Text.of("take off the jumper from %s to %s", step.jumper().from(), step.jumper().to());
  }

  @Override
  public String fitJumper(ReworkStep.FitJumper step) {
    return Text.of("fit the jumper from %s to %s", step.jumper().from(), step.jumper().to());
  }
}
