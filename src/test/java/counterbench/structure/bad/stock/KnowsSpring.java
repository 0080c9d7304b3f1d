package counterbench.structure.bad.stock;

import org.springframework.stereotype.Component;

/** Bad on purpose: a use case that Spring must make. */
@Component
public final class KnowsSpring {}
