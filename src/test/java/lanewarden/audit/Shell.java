package lanewarden.audit;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/** Other people's tools, where the machine has them. */
final class Shell {
  private Shell() {}

  static boolean has(String tool) {
    return Arrays.stream(System.getenv("PATH").split(File.pathSeparator))
        .anyMatch(folder -> Files.isExecutable(Path.of(folder, tool)));
  }

  /** Everything that a tool says, on both of its outputs. */
  static String run(String... command) throws IOException {
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    process.getOutputStream().close();
    return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
  }
}
