package lanewarden.kiosk.signin;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import lanewarden.kiosk.desk.Desk;
import lanewarden.station.Station;
import lanewarden.station.Trouble;
import org.jspecify.annotations.Nullable;

/** Signing in between the keys and the station; used on the screen's thread. */
public final class SignInViewModel {
  private final Desk desk;
  private final ObservableList<String> officials = FXCollections.observableArrayList();
  private final ObjectProperty<@Nullable String> chosen = new SimpleObjectProperty<>();
  private final BooleanProperty busy = new SimpleBooleanProperty();
  private final ObjectProperty<Optional<Trouble>> trouble =
      new SimpleObjectProperty<>(Optional.empty());

  /**
   * Asks the station at once who may sign in.
   *
   * @param known are listed until it answers
   */
  public SignInViewModel(Desk desk, List<String> known) {
    this.desk = desk;
    list(known);
    desk.ask(Station::officials, this::list, missed -> trouble.set(Optional.of(missed)));
  }

  private void list(List<String> names) {
    String picked = chosen.get();
    officials.setAll(names);
    if (!names.isEmpty()) {
      chosen.set(picked != null && names.contains(picked) ? picked : names.get(0));
    }
  }

  /** Who may sign in. */
  public ObservableList<String> officials() {
    return officials;
  }

  /** Who is about to; null while nobody is picked. */
  public ObjectProperty<@Nullable String> chosen() {
    return chosen;
  }

  /** Picks the official before (-1) or after (1) the one picked now. */
  public void choose(int step) {
    if (!officials.isEmpty()) {
      int index = Math.floorMod(officials.indexOf(chosen.get()) + step, officials.size());
      chosen.set(officials.get(index));
    }
  }

  /** Whether a key is being opened. */
  public BooleanProperty busy() {
    return busy;
  }

  /** Why nobody was signed in. */
  public ObjectProperty<Optional<Trouble>> trouble() {
    return trouble;
  }

  /**
   * Signs the picked official in.
   *
   * @param passphrase is wiped
   */
  public void signIn(char[] passphrase) {
    String name = chosen.get();
    if (name == null || busy.get()) {
      return;
    }
    busy.set(true);
    trouble.set(Optional.empty());
    desk.act(
        station -> station.signIn(name, passphrase),
        () -> busy.set(false),
        missed -> {
          busy.set(false);
          trouble.set(Optional.of(missed));
        });
  }
}
