package dev.warmlane.examples;

import dev.warmlane.scenario.ScenarioAnswer;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One question at the terminal.
 *
 * @param id what it is called among the answers; of one that a single key comes of, section and key such as
 *     {@code pool.depth}
 * @param heading what is printed above it; empty except for the first of a group
 * @param words what is asked
 * @param more what is said to somebody who answers with a question mark
 * @param asked whether it concerns this pool, after what was answered before
 * @param rare whether it is asked only of those who want to say more; else what is usual is taken
 * @param usual what an empty line means; empty where there is no usual answer
 * @param check makes the answer of what was written, or says what is wrong with it
 */
record Question(
        String id,
        String heading,
        Function<Answers, String> words,
        String more,
        Predicate<Answers> asked,
        boolean rare,
        Function<Answers, String> usual,
        Check check) {

    private static final Pattern NO = Pattern.compile("(?i)no?|none|nothing|without|no \\w+");

    /** Makes an answer of what was written. */
    interface Check {

        /**
         * The answer.
         *
         * @throws IllegalArgumentException if it cannot be one, with what is wrong and how to mend it
         */
        Answer of(String written, Answers before);
    }

    /** A question with a check of its own. */
    static Question own(String id, String words, String more, Check check) {
        return new Question(id, "", before -> words, more, before -> true, false, before -> "", check);
    }

    /** A question for a key of the scenario file, which says itself what it means and what is allowed. */
    static Question key(String id, String words, Function<Answers, String> unit) {
        String section = id.substring(0, id.indexOf('.'));
        String key = id.substring(id.indexOf('.') + 1);
        String more = ScenarioAnswer.meaning(section, key) + "; allowed: " + ScenarioAnswer.allowed(section, key);
        return own(
                id,
                words,
                more,
                (written, before) -> Answer.of(id, ScenarioAnswer.of(section, key, written, unit.apply(before))));
    }

    /** The same for a key without a unit. */
    static Question key(String id, String words) {
        return key(id, words, before -> "");
    }

    Question under(String group) {
        return new Question(id, group, words, more, asked, rare, usual, check);
    }

    Question asking(Function<Answers, String> otherWords) {
        return new Question(id, heading, otherWords, more, asked, rare, usual, check);
    }

    Question when(Predicate<Answers> condition) {
        return new Question(id, heading, words, more, condition, rare, usual, check);
    }

    Question ifMore() {
        return new Question(id, heading, words, more, asked, true, usual, check);
    }

    Question usually(Function<Answers, String> answer) {
        return new Question(id, heading, words, more, asked, rare, answer, check);
    }

    Question usually(String answer) {
        return usually(before -> answer);
    }

    /** The same with more for somebody who asks. */
    Question saying(String further) {
        return new Question(id, heading, words, more + "; " + further, asked, rare, usual, check);
    }

    /** The same with an answer of its own, of which nothing comes for the file; a no means it too. */
    Question or(String word, String moreOfIt) {
        return checked((written, before) -> {
                    if (NO.matcher(written.strip()).matches() || written.strip().equalsIgnoreCase(word)) {
                        return Answer.nothing(word);
                    }
                    try {
                        return check.of(written, before);
                    } catch (IllegalArgumentException e) {
                        throw new IllegalArgumentException(e.getMessage() + "; or write " + word, e);
                    }
                })
                .saying("or \"" + word + "\": " + moreOfIt);
    }

    /** The same for a number that may have words behind it which change nothing. */
    Question without(String words) {
        Pattern number = Pattern.compile("(?i)(\\d[\\d.,]*)\\s*(?:" + words + ")");
        return checked((written, before) -> {
            Matcher bare = number.matcher(written.strip());
            return check.of(bare.matches() ? bare.group(1) : written, before);
        });
    }

    /** The same with another check. */
    Question checked(Check other) {
        return new Question(id, heading, words, more, asked, rare, usual, other);
    }

    /** Takes what is usual, unless somebody said it before or there is nothing usual. */
    void assume(Answers answers) {
        boolean said = answers.to(id).filter(a -> !a.assumed()).isPresent();
        if (!asked.test(answers)) {
            answers.forget(id);
        } else if (!said) {
            String taken = usual.apply(answers);
            if (!taken.isEmpty()) {
                answers.put(id, check.of(taken, answers).taken());
            }
        }
    }
}
