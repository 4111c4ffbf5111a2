package lanewarden.kiosk;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import javafx.application.Platform;
import lanewarden.kiosk.form.Chooser;
import lanewarden.kiosk.look.Language;
import lanewarden.kiosk.sound.Cue;
import lanewarden.kiosk.sound.Loudspeaker;

/** Keeps account of what the screens of a booth asked of their windows. */
final class BoothWindows implements Front.Windows {
  final List<Cue> heard = new CopyOnWriteArrayList<>();
  private final Loudspeaker speaker = new Loudspeaker(Runnable::run, Platform::runLater);
  final Deque<Path> chosen = new ArrayDeque<>();
  private final Chooser chooser = new ChosenBefore(chosen);
  boolean boardTurned;
  boolean left;
  private boolean full;

  @Override
  public void turnBoard() {
    boardTurned = !boardTurned;
  }

  @Override
  public void speak(Language language) {
    throw new UnsupportedOperationException("a booth speaks one language");
  }

  @Override
  public void turnFull() {
    full = !full;
  }

  @Override
  public Optional<Chooser> chooser() {
    return full ? Optional.empty() : Optional.of(chooser);
  }

  @Override
  public boolean isFull() {
    return full;
  }

  @Override
  public void play(Cue cue) {
    heard.add(cue);
  }

  @Override
  public Loudspeaker speaker() {
    return speaker;
  }

  @Override
  public void end() {
    left = true;
  }
}
