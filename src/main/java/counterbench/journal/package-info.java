/** The journal: entries, the chain of hashes over them, and what it takes for one to hold. Pure. */
@NullMarked
package counterbench.journal;

import org.jspecify.annotations.NullMarked;
