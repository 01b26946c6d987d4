/** A program that names the uppermost module and gets what that implies. */
module consumer.modular {
    requires io.github.heatswell.scenarios;
}
