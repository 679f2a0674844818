"""An invented shop's year, made from a mass balance."""
