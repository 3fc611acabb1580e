package tiewright.http.visit;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import tiewright.http.pieces.Speech;
import tiewright.wording.Language;
import tiewright.wording.Languages;

/** In which language somebody reads: chosen by a link at the foot of every page and kept, else as the browser wishes. */
public final class Spoken {
    public static final String COOKIE = "language";

    private Spoken() {}

    public static Language of(Context ctx, Languages languages) {
        return Optional.ofNullable(ctx.cookie(COOKIE))
                .flatMap(languages::of)
                .orElseGet(() -> languages.wished(
                        Optional.ofNullable(ctx.header("Accept-Language")).orElse("")));
    }

    /** How the words of this visit are made, and the languages to choose from. */
    static Speech speech(Visit visit) {
        List<Language> all = visit.hall().templates().languages().all();
        return new Speech(
                visit.words(),
                all.size() == 1
                        ? List.of()
                        : all.stream()
                                .map(one -> new Speech.Choice(one.tag(), one.name(), href(visit, one)))
                                .toList());
    }

    private static String href(Visit visit, Language language) {
        Context ctx = visit.ctx();
        String asked =
                Optional.ofNullable(ctx.queryString()).map(query -> "?" + query).orElse("");
        String back = ctx.method().equals(HandlerType.GET) ? ctx.path() + asked : "/";
        return "/language/" + language.tag() + "?page=" + URLEncoder.encode(back, StandardCharsets.UTF_8);
    }
}
