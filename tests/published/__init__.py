"""Every row of shared/checks, natively and in the shipped WebAssembly bundle."""
