using LureSim.Model;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;
using LureSim.Scenarios.Reading;

namespace LureSim.Scenarios.Mapping;

/// <summary>The range of a value that follows from others and is a guess.</summary>
/// <param name="Key">Key.</param>
/// <param name="Low">Lower end, SI.</param>
/// <param name="High">Upper end, SI.</param>
internal sealed record RangedKey(KeySpec Key, double Low, double High);

/// <summary>What mappers share: values in, faults and ranges of derived guesses out.</summary>
internal sealed class MapContext(ScenarioValues values, Places places, FaultList faults, FaultList notes, List<RangedKey> ranges)
{
    public ScenarioValues Values { get; } = values;

    public int FaultCount => faults.Count;

    /// <summary>Whether anything stands in the way of an activity.</summary>
    public bool IsRefused(Activities activities) => faults.Concern(activities);

    public double this[KeySpec key] => Values.Number(key);

    /// <summary>Notes a fault where the key stands.</summary>
    public void Fault(KeySpec key, string message) => Fault(key, message, key.ReadBy);

    /// <summary>Notes a fault that does not concern all activities that read the key.</summary>
    public void Fault(KeySpec key, string message, Activities concerns) => faults.Add(places.Of(key), key.Path, message, concerns);

    /// <summary>Says what the writer should know though it is accepted.</summary>
    public void Note(KeySpec key, string message) => notes.Add(places.Of(key), key.Path, message);

    /// <summary>Notes a fault at a place inside a list.</summary>
    public void FaultAt(Place place, string name, string message) => faults.Add(place, name, message);

    public void Range(KeySpec key, double low, double high) => ranges.Add(new(key, low, high));

    /// <summary>Given, or the default that follows from other values with the range of that guess.</summary>
    public double Guessed(KeySpec key, Ranged usual)
    {
        if (Values.Has(key))
        {
            return this[key];
        }

        if (usual.High > usual.Low)
        {
            Range(key, usual.Low, usual.High);
        }

        return usual.Value;
    }

    /// <summary>The same for a usual value that is known as well, by share, as the default of its parameter; no guess where that is none.</summary>
    public double Guessed(KeySpec key, double usual)
    {
        Parameter p = key.Parameter!;
        return Guessed(key, new Ranged(usual, usual * (p.GuessLow / p.Default), usual * (p.GuessHigh / p.Default)));
    }

    /// <summary>The number that a word stands for, a guess with a range, unless the number itself was given.</summary>
    /// <param name="word">Key of the word; its <see cref="KeySpec.Gives"/> is the key of the number.</param>
    public double FromWord(KeySpec word)
    {
        KeySpec number = word.Gives!;
        if (Values.Has(number))
        {
            return this[number];
        }

        if (ValueReader.FindChoice(word, Values.Text(word)) is not Choice choice)
        {
            return double.NaN;
        }

        Range(number, choice.Low, choice.High);
        return choice.Value;
    }

    /// <summary>The value in the key's own unit.</summary>
    public static string Show(KeySpec key, double si) => Quantity.Show(si, key.Kind, key.Unit);
}
