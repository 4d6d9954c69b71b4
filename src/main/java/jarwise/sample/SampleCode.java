package jarwise.sample;

import jarwise.base.InvalidInput;

/**
 * The code on a sample's label, unique in a nursery.
 *
 * @param text 1 to 60 visible characters, as printed or as found in a sheet
 */
public record SampleCode(String text) implements Comparable<SampleCode> {

    public SampleCode {
        if (text.isBlank() || text.length() > 60 || text.chars().anyMatch(c -> c < ' ')) {
            throw new InvalidInput(
                    "The sample code is '%s'; it must be 1 to 60 visible characters."
                            .formatted(text));
        }
    }

    @Override
    public int compareTo(SampleCode other) {
        return text.compareTo(other.text);
    }

    @Override
    public String toString() {
        return text;
    }
}
