package lanewarden.kiosk.audit;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.EventFolder;
import lanewarden.station.Trouble;

/** Making the audit report while the line goes on; used on the screen's thread. */
public final class ReportViewModel {

  /** How the making stands. */
  public enum Phase {
    /** Nothing was asked for yet. */
    IDLE,
    /** It is being made. */
    MAKING,
    /** The file is there. */
    MADE,
    /** It could not be made. */
    MISSED
  }

  /** A progress that is not known, as progress bars understand it. */
  private static final double UNKNOWN = -1;

  private final ReportMaker maker;
  private final EventFolder folder;
  private final Executor work;
  private final Executor screen;
  private final Texts texts;
  private final ObjectProperty<Phase> phase = new SimpleObjectProperty<>(Phase.IDLE);
  private final DoubleProperty progress = new SimpleDoubleProperty(0);
  private final StringProperty words;
  private final ObjectProperty<Optional<Trouble>> trouble =
      new SimpleObjectProperty<>(Optional.empty());

  /**
   * @param work runs the making off the screen's thread and apart from the line's own work
   * @param screen runs tasks on the screen's thread
   */
  public ReportViewModel(
      ReportMaker maker, EventFolder folder, Executor work, Executor screen, Texts texts) {
    this.maker = maker;
    this.folder = folder;
    this.work = work;
    this.screen = screen;
    this.texts = texts;
    this.words = new SimpleStringProperty(texts.of("report.idle"));
  }

  /** How it stands. */
  public ObjectProperty<Phase> phase() {
    return phase;
  }

  /** How far it is, 0 to 1; negative if that is not known. */
  public DoubleProperty progress() {
    return progress;
  }

  /** What is being done, or where the file is. */
  public StringProperty words() {
    return words;
  }

  /** Why it could not be made. */
  public ObjectProperty<Optional<Trouble>> trouble() {
    return trouble;
  }

  /**
   * Makes the report of the ledger as it is now, unless one is being made.
   *
   * @param head names the file, so that a report never takes the place of an earlier one
   */
  public void make(String head) {
    if (phase.get() == Phase.MAKING) {
      return;
    }
    Path pdf = folder.path().resolve("audit-" + head + ".pdf");
    phase.set(Phase.MAKING);
    trouble.set(Optional.empty());
    progress.set(UNKNOWN);
    words.set(texts.of("report.making"));
    work.execute(() -> work(pdf));
  }

  private void work(Path pdf) {
    try {
      maker.make(folder.ledger(), pdf, p -> screen.execute(() -> show(p)));
      screen.execute(() -> end(Phase.MADE, texts.of("report.made", pdf.toAbsolutePath())));
    } catch (Exception | Error e) {
      Trouble missed = Trouble.of(e);
      screen.execute(
          () -> {
            trouble.set(Optional.of(missed));
            end(Phase.MISSED, texts.of("report.missed"));
          });
    }
  }

  private void show(ReportMaker.Progress step) {
    words.set(step.step());
    progress.set(step.total() <= 0 ? UNKNOWN : Math.min(1.0, (double) step.done() / step.total()));
  }

  private void end(Phase ended, String outcome) {
    phase.set(ended);
    progress.set(ended == Phase.MADE ? 1 : 0);
    words.set(outcome);
  }
}
