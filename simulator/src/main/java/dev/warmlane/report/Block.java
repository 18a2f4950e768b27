package dev.warmlane.report;

import dev.warmlane.report.chart.Chart;
import dev.warmlane.report.chart.RoofSheet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/** A piece of a report, before anybody has decided how it looks. A {@link Table} is one too. */
public sealed interface Block permits Block.Words, Block.Points, Block.KeyFigures, Block.Picture, Block.Plan, Table {

    /** Whether it is set in columns, and so has room around it. */
    boolean inColumns();

    /** The plan that it is; nothing for any other. */
    default Optional<Plan> plan() {
        return Optional.empty();
    }

    /** The picture that it is; nothing for any other. */
    default Optional<Picture> picture() {
        return Optional.empty();
    }

    /** Answers for the kind that this is. */
    <T> T as(Kinds<T> kinds);

    /**
     * What to make of each kind of block: a new kind is an error of the compiler wherever one is forgotten.
     *
     * @param <T> what is made
     */
    interface Kinds<T> {

        /** Of a paragraph. */
        T words(Words words);

        /** Of a list. */
        T points(Points points);

        /** Of large numbers. */
        T figures(KeyFigures figures);

        /** Of a table. */
        T table(Table table);

        /** Of a picture. */
        T picture(Picture picture);

        /** Of a plan. */
        T plan(Plan plan);
    }

    /**
     * A paragraph.
     *
     * @param text the paragraph, unbroken
     */
    record Words(String text) implements Block {
        @Override
        public boolean inColumns() {
            return false;
        }

        @Override
        public <T> T as(Kinds<T> kinds) {
            return kinds.words(this);
        }
    }

    /**
     * A list.
     *
     * @param points its points, unbroken
     */
    record Points(List<String> points) implements Block {

        /** Keeps its own copy of the list. */
        public Points {
            points = List.copyOf(points);
        }

        @Override
        public boolean inColumns() {
            return false;
        }

        @Override
        public <T> T as(Kinds<T> kinds) {
            return kinds.points(this);
        }
    }

    /**
     * A few large numbers.
     *
     * @param figures the numbers
     */
    record KeyFigures(List<Figure> figures) implements Block {

        /** Keeps its own copy of the list. */
        public KeyFigures {
            figures = List.copyOf(figures);
        }

        @Override
        public boolean inColumns() {
            return true;
        }

        @Override
        public <T> T as(Kinds<T> kinds) {
            return kinds.figures(this);
        }
    }

    /**
     * A large number.
     *
     * @param value the number with its unit
     * @param meaning what it is
     * @param range between what it may be; empty for nothing
     * @param beside what it is to be seen against; empty for nothing
     */
    record Figure(String value, String meaning, String range, String beside) {

        /** Without a range. */
        public Figure(String value, String meaning, String beside) {
            this(value, meaning, "", beside);
        }
    }

    /**
     * A plan to scale. It is drawn when somebody asks for it.
     *
     * @param name the name of its files, without an ending
     * @param draw makes the drawing
     */
    record Plan(String name, Supplier<RoofSheet> draw) implements Block {

        @Override
        public Optional<Plan> plan() {
            return Optional.of(this);
        }

        @Override
        public boolean inColumns() {
            return false;
        }

        @Override
        public <T> T as(Kinds<T> kinds) {
            return kinds.plan(this);
        }
    }

    /** A chart. It is drawn when somebody asks for it, once: whoever wants text alone does not wait for it. */
    final class Picture implements Block {

        private final String name;
        private final Function<String, Optional<Chart>> draw;
        private Optional<Chart> chart = Optional.empty();
        private boolean drawn;

        /**
         * A chart to be drawn.
         *
         * @param name the name of its files, without an ending
         * @param draw makes the chart of that name; nothing where there is nothing to show on it
         */
        public Picture(String name, Function<String, Optional<Chart>> draw) {
            this.name = name;
            this.draw = draw;
        }

        /** The name of its files, without an ending. */
        public String name() {
            return name;
        }

        /** The chart; nothing where there is nothing to show on it. */
        public synchronized Optional<Chart> chart() {
            if (!drawn) {
                chart = draw.apply(name);
                drawn = true;
            }
            return chart;
        }

        @Override
        public Optional<Picture> picture() {
            return Optional.of(this);
        }

        @Override
        public boolean inColumns() {
            return false;
        }

        @Override
        public <T> T as(Kinds<T> kinds) {
            return kinds.picture(this);
        }
    }
}
