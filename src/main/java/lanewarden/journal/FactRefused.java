package lanewarden.journal;

import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonMappingException.Reference;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
import java.util.stream.Collectors;

/** An entry whose body is not what its kind demands. */
public final class FactRefused extends Exception {
  private static final long serialVersionUID = 1L;

  private final long sequence;

  FactRefused(long sequence, String kind, Throwable cause) {
    super("entry " + sequence + " of kind " + kind + " cannot be read: " + why(cause), cause);
    this.sequence = sequence;
  }

  /** The cause in plain words: a JSON library speaks of its own classes and settings. */
  private static String why(Throwable cause) {
    if (cause instanceof UnrecognizedPropertyException unknown) {
      return "the member " + unknown.getPropertyName() + " is unknown";
    }
    if (cause instanceof JsonMappingException misfit && !misfit.getPath().isEmpty()) {
      return "the member "
          + misfit.getPath().stream()
              .map(Reference::getFieldName)
              .map(name -> name == null ? "in a list" : name)
              .collect(Collectors.joining(" "))
          + " is missing or not what it must be";
    }
    return String.valueOf(cause.getMessage());
  }

  /** The entry's place in the chain. */
  public long sequence() {
    return sequence;
  }
}
