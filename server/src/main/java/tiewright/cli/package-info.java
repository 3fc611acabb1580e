/**
 * The commands: each reads plain files, asks a computing room, prints.
 *
 * <p>Start at {@link tiewright.cli.Main}. Exit status: 0 done, 2 bad input, 3 a conflict was found, 4 impossible as asked.
 */
@NullMarked
package tiewright.cli;

import org.jspecify.annotations.NullMarked;
