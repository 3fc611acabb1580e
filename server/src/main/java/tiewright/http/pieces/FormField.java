package tiewright.http.pieces;

/** Something that is filled in. */
public sealed interface FormField permits TextField, SelectField, ChoiceList, InputTable, HiddenField {}
