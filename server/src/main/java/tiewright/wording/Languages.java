package tiewright.wording;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The languages that a running service can speak: English, and every other that has a file. Looked for once. */
public final class Languages {
    private Optional<List<Language>> found = Optional.empty();

    /** English first. */
    public synchronized List<Language> all() {
        if (found.isEmpty()) {
            found = Optional.of(Language.all());
        }
        return found.get();
    }

    public Optional<Language> of(String tag) {
        return all().stream().filter(one -> one.tag().equals(tag)).findFirst();
    }

    /**
     * The language that a browser wishes most and that is there; English without one.
     *
     * @param wishes as in {@code Accept-Language} (RFC 9110, 12.5.4); what cannot be read wishes nothing
     */
    public Language wished(String wishes) {
        if (all().size() == 1 || wishes.isBlank()) {
            return Language.ENGLISH;
        }
        try {
            return Locale.LanguageRange.parse(wishes).stream()
                    .filter(wish -> wish.getWeight() > 0)
                    .flatMap(wish -> of(wish.getRange().split("-")[0]).stream())
                    .findFirst()
                    .orElse(Language.ENGLISH);
        } catch (IllegalArgumentException unreadable) {
            return Language.ENGLISH;
        }
    }
}
