package tiewright.http.film;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tiewright.event.Refusal;
import tiewright.http.pieces.GivenFile;
import tiewright.http.visit.Form;
import tiewright.http.visit.Uploads;
import tiewright.plainfiles.FolderFault;
import tiewright.plainfiles.GivenBytes;
import tiewright.plainfiles.PlainFile;
import tiewright.wording.Words;

/**
 * A plain file as it was given in a form: chosen, or else pasted.
 *
 * @param unread why it is no text; empty where it is
 */
record GivenText(PlainFile file, String text, Optional<FolderFault> unread) {
    private static final String CHOSEN = "-file";
    private static final int FAULTS_SHOWN = 100;

    static GivenText nothing(PlainFile file) {
        return new GivenText(file, "", Optional.empty());
    }

    static GivenText of(Context ctx, Form form, PlainFile file) {
        Optional<byte[]> chosen = Uploads.bytes(ctx, file.fileName() + CHOSEN);
        if (chosen.isEmpty()) {
            return new GivenText(file, form.text(file.fileName()), Optional.empty());
        }
        Optional<String> text = GivenBytes.text(chosen.get());
        return new GivenText(
                file, text.orElse(""), text.isEmpty() ? Optional.of(GivenBytes.notText(file)) : Optional.empty());
    }

    /** Of what was found wrong in this file, all; only that it is no text where it is none. */
    List<FolderFault> faults(List<FolderFault> found) {
        return unread.map(List::of)
                .orElseGet(() -> found.stream()
                        .filter(fault -> fault.file().equals(file.fileName()))
                        .toList());
    }

    /** One sentence where anything is wrong; what it is stands beside the field. */
    Optional<Refusal> refusal(List<FolderFault> found) {
        return faults(found).isEmpty()
                ? Optional.empty()
                : Optional.of(Refusal.of("form.file-faults")
                        .with("file", file.fileName())
                        .at(file.fileName()));
    }

    /** The field with what was given still in it. */
    GivenFile field(List<FolderFault> found, Words words) {
        List<FolderFault> faults = faults(found);
        Stream<String> more = faults.size() > FAULTS_SHOWN
                ? Stream.of(words.say("page-film.and-more-faults", "count", faults.size() - FAULTS_SHOWN))
                : Stream.empty();
        return new GivenFile(
                file.fileName(),
                file.fileName(),
                String.join(",", file.columns()),
                text,
                Stream.concat(faults.stream().limit(FAULTS_SHOWN).map(fault -> fault.said(words)), more)
                        .toList());
    }
}
