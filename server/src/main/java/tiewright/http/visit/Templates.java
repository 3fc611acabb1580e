package tiewright.http.visit;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.Map;
import tiewright.wording.Languages;

/** The compiled templates of {@code web}. */
public final class Templates {
    private final TemplateEngine engine =
            TemplateEngine.createPrecompiled(null, ContentType.Html, null, "tiewright.templates");

    private final Languages languages = new Languages();

    /** The languages in which they can be filled in. */
    public Languages languages() {
        return languages;
    }

    String html(String template, Map<String, Object> params) {
        StringOutput out = new StringOutput();
        engine.render(template + ".jte", params, out);
        return out.toString();
    }
}
