package tiewright.saturday;

import java.util.List;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/**
 * A page as one person got it at one moment.
 *
 * @param text what a person reads, blanks folded; nothing of what stands in boxes to type into
 * @param led whether the service went on to it from where the person asked, as it does once a form was taken
 */
record Sight(Person who, String path, int status, Document page, String text, boolean led) {
    static Sight of(Person who, String path, int status, Document page) {
        return new Sight(who, path, status, page, page.body().text(), false);
    }

    Sight afterBeingLed(boolean on) {
        return new Sight(who, path, status, page, text, on);
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

    /** Where a form of this page is sent. */
    String action(Element form) {
        return form.hasAttr("action") ? form.attr("action") : path;
    }

    boolean isRead() {
        return status == 200;
    }

    @Override
    public String toString() {
        return who + " at " + path + " (" + status + ")";
    }
}
