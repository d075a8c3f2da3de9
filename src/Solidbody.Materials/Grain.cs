namespace Solidbody.Materials;

/// <summary>How a board's width lies to the yearly rings: along them (flatsawn), or across them (quartersawn), which moves about half as much.</summary>
public enum Grain { Flat, Quarter }
