/**
 * The layer on which all commands stand. A command states its name, purpose, options and arguments
 * as data ({@link counterbench.shell.Manual}) and does its work in one method; reading the command
 * line, refusing what is wrong with it, help, completion, printing and exit codes are done here,
 * once, for all of them.
 *
 * <p>A line goes this way: {@link counterbench.shell.Tokenizer} → {@link
 * counterbench.shell.LineParser} → {@link counterbench.shell.Runner} → {@link
 * counterbench.shell.BaseCommand} → {@link counterbench.shell.Status}.
 */
@NullMarked
package counterbench.shell;

import org.jspecify.annotations.NullMarked;
