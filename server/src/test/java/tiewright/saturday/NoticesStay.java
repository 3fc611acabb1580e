package tiewright.saturday;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jsoup.nodes.Element;

/** A posted notice says the same for ever; only whom it was told may grow under it. */
final class NoticesStay implements Promise {
    private final Map<String, String> posted = new TreeMap<>();

    @Override
    public List<Broken> broken(Moment moment) {
        List<Broken> broken = new ArrayList<>();
        for (Sight sight : moment.at("/notices")) {
            for (Element notice : sight.page().select("article.notice")) {
                String title = notice.select("h3").text();
                String said = notice.select(".old,.new").text();
                String before = posted.putIfAbsent(title.replaceFirst(":.*", "") + where(notice), title + " " + said);
                if (before != null) {
                    moment.met(Looked.NOTICE_READ_AGAIN);
                }
                if (before != null && !before.equals(title + " " + said)) {
                    broken.add(new Broken(
                            14, "a notice said \"" + before + "\" and now says \"" + title + " " + said + "\""));
                }
            }
        }
        return broken;
    }

    private static String where(Element notice) {
        return notice.select("h3").text().startsWith("Notice") ? "" : " ruling";
    }
}
