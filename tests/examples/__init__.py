"""The examples of the contract: what they ask, and the files that hold them."""
