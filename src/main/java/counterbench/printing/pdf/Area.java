package counterbench.printing.pdf;

/** A rectangle on a page. */
record Area(float left, float top, float width, float height) {
    /** The same without a margin all around. */
    Area within(float margin) {
        return new Area(left + margin, top + margin, width - 2 * margin, height - 2 * margin);
    }

    float bottom() {
        return top + height;
    }
}
