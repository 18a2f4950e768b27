package dev.warmlane.report.chart;

import java.awt.BasicStroke;

/** Lines that can be told apart without colour. */
enum Pen {
    THICK,
    DASHED,
    DOTTED,
    DASH_DOT,
    LONG_DASH,
    HAIR;

    BasicStroke stroke() {
        return switch (this) {
            case THICK -> stroke(2.6f);
            case DASHED -> stroke(1.8f, 8, 4);
            case DOTTED -> stroke(2.2f, 2.2f, 3.6f);
            case DASH_DOT -> stroke(1.3f, 10, 3, 2, 3);
            case LONG_DASH -> stroke(0.9f, 16, 5);
            case HAIR -> stroke(0.8f);
        };
    }

    private static BasicStroke stroke(float width, float... dashes) {
        return new BasicStroke(
                width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dashes.length == 0 ? null : dashes, 0);
    }
}
