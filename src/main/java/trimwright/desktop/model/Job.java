package trimwright.desktop.model;

/** What a builder does with her, in the order in which it comes up. */
public enum Job {
    LOAD("Load", "What is in her, and where"),
    AFLOAT("Afloat", "Her line, her water, other ways she can rest"),
    DIVE("Dive", "Fill the tanks and watch her go under"),
    STAND("Stand", "How firmly she stands up"),
    BALLAST("Ballast", "Lead and foam that put her on her line"),
    POOL_TEST("Pool test", "How far she may be off; what the pool says, and what to change");

    private final String title;
    private final String purpose;

    Job(String title, String purpose) {
        this.title = title;
        this.purpose = purpose;
    }

    public String title() {
        return title;
    }

    public String purpose() {
        return purpose;
    }
}
