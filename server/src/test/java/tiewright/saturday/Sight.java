package tiewright.saturday;

import java.util.List;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** A page as one person got it at one moment. */
record Sight(Person who, String path, int status, Document page) {

    /** What a person reads, blanks folded; nothing of what stands in boxes to type into. */
    String text() {
        return page.body().text();
    }

    String title() {
        return page.title();
    }

    /** Ways on: addresses of this service, as they stand on the page. */
    List<String> ways() {
        return page.select("a[href]").stream()
                .map(link -> link.attr("href"))
                .filter(href -> href.startsWith("/") && !href.startsWith("//"))
                .map(href -> href.replaceFirst("#.*$", ""))
                .distinct()
                .toList();
    }

    List<String> ways(String selector) {
        return page.select(selector).stream()
                .map(link -> link.attr("href"))
                .distinct()
                .toList();
    }

    /** Forms that change something. */
    List<Element> forms() {
        return page.select("form[method=post]").stream().toList();
    }

    List<Element> questions() {
        return page.select("form").stream()
                .filter(form -> !form.attr("method").equalsIgnoreCase("post"))
                .toList();
    }

    boolean isRead() {
        return status == 200;
    }

    @Override
    public String toString() {
        return who + " at " + path + " (" + status + ")";
    }
}
