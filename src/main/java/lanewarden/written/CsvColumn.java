package lanewarden.written;

/** A column that a CSV file of one kind may have; an enum names all of them. */
public interface CsvColumn {
  /** As the header line writes it. */
  String title();

  /** Whether every line needs a value in it. */
  boolean isRequired();
}
