package dev.warmlane.scenario;

/** How money is written: a word or a sign. What has a number in it is a price, and has a key of its own. */
record CurrencyKind() implements Kind<String> {

    private static final Kind<String> TEXT = WordKinds.text();

    @Override
    public String read(Object toml) throws BadValueException {
        String text = TEXT.read(toml).strip();
        if (text.matches(".*\\d.*")) {
            throw new BadValueException("found " + BadValueException.show(toml)
                    + "; write how money is written, such as \"EUR\"; prices have keys of their own");
        }
        return text;
    }

    @Override
    public String write(String value) {
        return TEXT.write(value);
    }

    @Override
    public String show(String value) {
        return value;
    }

    @Override
    public String allowed() {
        return "a text in quotes without digits";
    }

    @Override
    public String standIn() {
        return TEXT.standIn();
    }
}
