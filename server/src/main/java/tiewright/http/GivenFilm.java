package tiewright.http;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.Refusal;
import tiewright.plainfiles.FilmNotes;
import tiewright.plainfiles.FolderFault;
import tiewright.plainfiles.PlainFile;

/**
 * The two files as they were given: chosen, or else pasted.
 *
 * @param unread files that are no text
 * @param faults what is wrong with them, as far as that is known
 */
record GivenFilm(String games, String rallies, List<FolderFault> unread, List<FolderFault> faults) {
  static final GivenFilm NOTHING = new GivenFilm("", "", List.of(), List.of());

  private static final String FILE = "-file";

  static GivenFilm of(Context ctx, Form form) {
    List<FolderFault> unread = new ArrayList<>();
    return new GivenFilm(
        text(ctx, form, PlainFile.GAMES, unread), text(ctx, form, PlainFile.RALLIES, unread), List.copyOf(unread), List.of());
  }

  /** The name of the field that takes the file itself; the box for its text has the file's own name. */
  static String fieldOf(PlainFile file) {
    return file.fileName() + FILE;
  }

  private static String text(Context ctx, Form form, PlainFile file, List<FolderFault> unread) {
    Optional<byte[]> chosen = Optional.ofNullable(ctx.uploadedFile(fieldOf(file))).map(GivenFilm::bytes).filter(bytes -> bytes.length > 0);
    if (chosen.isEmpty()) {
      return form.text(file.fileName());
    }
    Optional<String> text = FilmNotes.text(chosen.get());
    if (text.isEmpty()) {
      unread.add(FilmNotes.notText(file));
    }
    return text.orElse("");
  }

  private static byte[] bytes(UploadedFile file) {
    try (InputStream in = file.content()) {
      return in.readAllBytes();
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  FilmNotes read(FilmNotes.Known event) {
    FilmNotes notes = FilmNotes.read(games, rallies, event);
    List<FolderFault> all = new ArrayList<>(unread);
    notes.faults().stream()
        .filter(fault -> unread.stream().noneMatch(one -> one.file().equals(fault.file())))
        .forEach(all::add);
    return new FilmNotes(notes.games(), all);
  }

  GivenFilm with(List<FolderFault> found) {
    return new GivenFilm(games, rallies, unread, List.copyOf(found));
  }

  String text(PlainFile file) {
    return file == PlainFile.GAMES ? games : rallies;
  }

  List<FolderFault> faults(PlainFile file) {
    return faults.stream().filter(fault -> fault.file().equals(file.fileName())).toList();
  }

  /** One sentence for each file with faults; the faults themselves stand beside its field. */
  List<Refusal> refusals(List<FolderFault> found) {
    return FilmViews.FILES.stream()
        .filter(file -> !with(found).faults(file).isEmpty())
        .map(file -> Refusal.of("form.film-faults").with("file", file.fileName()).at(file.fileName()))
        .toList();
  }
}
