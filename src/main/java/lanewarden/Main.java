package lanewarden;

import java.io.Console;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Optional;
import lanewarden.audit.AuditReport;
import lanewarden.audit.slip.Slips;
import lanewarden.command.FirstScreen;
import lanewarden.command.HiddenEntry;
import lanewarden.command.NoDisplay;
import lanewarden.command.Program;
import lanewarden.command.Screens;
import lanewarden.command.StudioScreen;
import lanewarden.command.Terminal;
import lanewarden.kiosk.EarlyStart;
import lanewarden.kiosk.Kiosk;
import lanewarden.kiosk.Makers;
import lanewarden.kiosk.NoDisplayException;
import lanewarden.kiosk.desk.Printing;
import lanewarden.kiosk.protest.SlipMaker;
import lanewarden.station.CheckUp;
import lanewarden.station.ProgramLog;
import lanewarden.station.SignedPapers;
import lanewarden.station.Surroundings;
import lanewarden.station.UserFolder;
import org.jspecify.annotations.Nullable;

/** Starts the program: joins the rooms by hand, and lets the clock and randomness in. */
public final class Main {

  private Main() {}

  /** Runs the command that the arguments name, and ends with its exit code. */
  public static void main(String[] arguments) {
    // The report's pictures are drawn by AWT, which must not open the window system a second time.
    System.setProperty("java.awt.headless", "true");
    Console console = System.console();
    Terminal terminal =
        new Terminal(System.in, System.out, System.err, charset(console), hidden(console));
    System.exit(run(terminal, arguments));
  }

  private static int run(Terminal terminal, String[] arguments) {
    EarlyStart early = new EarlyStart();
    if (Program.showsScreens(arguments)) {
      early.begin();
    }
    try (ProgramLog log = ProgramLog.open(user(), home())) {
      Surroundings here =
          new Surroundings(Clock.systemUTC(), System::nanoTime, new SecureRandom(), program())
              .with(log);
      Kiosk kiosk = kiosk(here, early);
      return new Program(terminal, here, screens(kiosk), studio(kiosk), first(kiosk))
          .run(arguments);
    }
  }

  private static String program() {
    return "Lanewarden "
        + Optional.ofNullable(Main.class.getPackage().getImplementationVersion())
            .orElse("of a working folder");
  }

  /** UTF-8, except in a console of Windows, which has its own. */
  private static Charset charset(@Nullable Console console) {
    boolean windows =
        System.getProperty("os.name", "").toLowerCase(Locale.ROOT).startsWith("windows");
    return windows && console != null ? console.charset() : StandardCharsets.UTF_8;
  }

  private static Optional<HiddenEntry> hidden(@Nullable Console console) {
    return Optional.ofNullable(console)
        .map(keyboard -> prompt -> Optional.ofNullable(keyboard.readPassword("%s", prompt)));
  }

  private static Kiosk kiosk(Surroundings here, EarlyStart early) {
    Clock clock = here.clock();
    return new Kiosk(
        new Makers(
            new AuditReport(clock, SignedPapers::of)::write,
            SlipMaker.of(new Slips(clock, SignedPapers::of)),
            Printing.onSystem(),
            new CheckUp(here, ZoneId.systemDefault())),
        here,
        user(),
        early);
  }

  private static Screens screens(Kiosk kiosk) {
    return (opening, hint, full) -> {
      try {
        kiosk.show(opening, hint, full);
      } catch (NoDisplayException e) {
        throw new NoDisplay(String.valueOf(e.getMessage()), e);
      }
    };
  }

  private static UserFolder user() {
    return UserFolder.of(System.getProperty("os.name", ""), home(), System.getenv());
  }

  private static Path home() {
    return Path.of(System.getProperty("user.home", ""));
  }

  private static FirstScreen first(Kiosk kiosk) {
    return (line, event) -> {
      try {
        kiosk.start(line, event);
      } catch (NoDisplayException e) {
        throw new NoDisplay(String.valueOf(e.getMessage()), e);
      }
    };
  }

  private static StudioScreen studio(Kiosk kiosk) {
    return draft -> {
      try {
        kiosk.studio(draft);
      } catch (NoDisplayException e) {
        throw new NoDisplay(String.valueOf(e.getMessage()), e);
      }
    };
  }
}
