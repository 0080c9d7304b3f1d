/** What a job can be claimed for: labour, parts, core charge, each rounded by itself. Pure. */
@NullMarked
package counterbench.claims.draft;

import org.jspecify.annotations.NullMarked;
