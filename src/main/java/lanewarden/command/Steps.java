package lanewarden.command;

import java.util.function.Consumer;
import lanewarden.audit.press.Progress;

/** Says on the terminal how far something is, each step once. */
final class Steps implements Consumer<Progress> {
  private static final int WHOLE = 100;

  private final Terminal terminal;
  private String said = "";

  Steps(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public void accept(Progress progress) {
    String words =
        "%3d %% %s".formatted(WHOLE * progress.done() / progress.total(), progress.step());
    if (!words.equals(said)) {
      said = words;
      terminal.say(words);
    }
  }
}
