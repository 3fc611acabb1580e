package tiewright.bench;

import io.javalin.Javalin;

/** A service with one page and nothing behind it: what the start is compared with. */
final class BareJavalin {
    private BareJavalin() {}

    public static void main(String[] args) {
        Javalin bare = Javalin.create(config -> {
                    config.startup.showJavalinBanner = false;
                    config.jetty.host = "127.0.0.1";
                    config.jetty.port = 0;
                    config.routes.get("/", ctx -> ctx.html("<!doctype html><title>bare</title><p>A page."));
                })
                .start();
        System.out.println("Bare page at http://127.0.0.1:" + bare.port());
    }
}
