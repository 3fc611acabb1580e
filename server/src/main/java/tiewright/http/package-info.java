/**
 * The running service: it listens, lets in who may come, shows pages and what went wrong, tells open pages of changes, and does
 * by itself what is due. The pages are in the rooms below, by whom they serve: each gives its own, all stand on the kit
 * {@code visit}, and none knows another. Only these rooms know Javalin and jte.
 *
 * <p>Entry: {@link tiewright.http.Service}.
 */
@NullMarked
package tiewright.http;

import org.jspecify.annotations.NullMarked;
