package tiewright.http.everybody;

import tiewright.http.visit.Door;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.paper.QrCode;

/** The address of the service for the wall, as a picture that a phone reads. */
final class QrPage implements Page {
    @Override
    public void at(Routes routes) {
        routes.get(
                Door.ANYBODY,
                "/qr.svg",
                visit -> visit.ctx()
                        .contentType("image/svg+xml")
                        .result(svg(QrCode.of(visit.hall().address().url()))));
    }

    private static String svg(QrCode code) {
        String size = code.size() + " " + code.size();
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + size + "\" shape-rendering=\"crispEdges\">"
                + "<rect width=\"100%\" height=\"100%\" fill=\"#FFFFFF\"/><path fill=\"#000000\" d=\"" + code.path()
                + "\"/></svg>";
    }
}
