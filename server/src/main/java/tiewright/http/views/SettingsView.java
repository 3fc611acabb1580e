package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.Refusal;

/**
 * The form of all conditions in three levels: the preset, what differs from it, and all of them behind a fold.
 *
 * @param base the preset that the values differ from
 * @param notes what does not go well together
 * @param changed what differs from the preset, as fields
 * @param rest every other setting
 * @param ruling asked once the conditions are frozen, empty before
 */
public record SettingsView(
        Refusal refusal,
        List<String> intro,
        List<Preset> presets,
        String base,
        List<String> notes,
        Changed changed,
        Rest rest,
        List<FormField> ruling) {
    public SettingsView {
        intro = List.copyOf(intro);
        presets = List.copyOf(presets);
        notes = List.copyOf(notes);
        ruling = List.copyOf(ruling);
    }

    /** A preset in one line. */
    public record Preset(String name, String words, String href, boolean chosen) {}

    /** @param line how many differ */
    public record Changed(String line, List<FormField> fields) {
        public Changed {
            fields = List.copyOf(fields);
        }
    }

    /** @param line how many there are */
    public record Rest(String line, List<Group> groups) {
        public Rest {
            groups = List.copyOf(groups);
        }

        public boolean isWrong() {
            return groups.stream().anyMatch(Group::isWrong);
        }
    }

    /**
     * The settings under one printed heading.
     *
     * @param stands what is chosen there, in one line
     * @param isWrong something there was refused
     */
    public record Group(String id, String heading, String stands, boolean isWrong, List<FormField> fields) {
        public Group {
            fields = List.copyOf(fields);
        }
    }
}
