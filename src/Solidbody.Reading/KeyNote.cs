namespace Solidbody.Reading;

/// <summary>What a reader says about one key as it asks for it: what the documents and the starter file are made of.</summary>
/// <param name="Table">Path of its table: <c>body.pickups</c>; empty at the top.</param>
/// <param name="Element">Which element of a list of tables, from 0; −1 in a plain table.</param>
/// <param name="Key">The key.</param>
/// <param name="Allowed">Range or words, in the file's unit.</param>
/// <param name="Default">As it would be written in the file; null when the key must be given.</param>
/// <param name="What">What it means.</param>
public sealed record KeyNote(string Table, int Element, string Key, string Allowed, string? Default, string What);
