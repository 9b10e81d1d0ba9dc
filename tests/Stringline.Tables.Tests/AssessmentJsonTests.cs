using System.Text;
using System.Text.Json;
using Stringline.Law.Facts;
using Stringline.Testing;

namespace Stringline.Tables.Tests;

public sealed class AssessmentJsonTests
{
    /// <summary>The shape that other programs rely on: names, order, two decimals, null only at the end of an open band.</summary>
    [Fact]
    public void An_assessment_is_written_in_its_published_shape() => Assert.Equal(
        """
        {
          "asOf": "2026-06-22",
          "name": "Alder “Court”",
          "caution": "Not legal advice. Confirm with the county recorder, the local rules and a California construction lawyer.",
          "findings": [
            {
              "id": "claim-of-lien.last-day",
              "title": "Claim of lien: last day to record",
              "standing": "open",
              "actBy": "2026-08-14",
              "earliest": "2026-08-16",
              "latest": "2026-09-10",
              "readings": [
                {
                  "reading": "completion by occupation",
                  "lastDay": "2026-08-16",
                  "rolled": "2026-08-17"
                },
                {
                  "reading": "actual completion",
                  "lastDay": "2026-09-10"
                }
              ],
              "sections": [
                "Civ. Code § 8414(b)",
                "Civ. Code § 8180(a)(2)"
              ],
              "why": [
                {
                  "text": "90 days after completion.",
                  "section": "Civ. Code § 8414(b)",
                  "facts": [],
                  "why": [
                    {
                      "text": "Occupied 2026-05-18 (Mon).",
                      "section": "Civ. Code § 8180(a)(2)",
                      "facts": [
                        "entries[0]"
                      ]
                    },
                    {
                      "text": "No notice of completion is recorded.",
                      "section": "Civ. Code § 8414(b)(2)",
                      "facts": [],
                      "applied": false
                    }
                  ]
                }
              ],
              "questions": [
                {
                  "text": "When did labor cease?",
                  "days": 25
                },
                {
                  "text": "Was the charge agreed?",
                  "dollars": 412.80
                }
              ]
            },
            {
              "id": "completion.day",
              "title": "Completion of the work",
              "standing": "in doubt",
              "earliest": "2026-05-18",
              "latest": null,
              "readings": [
                {
                  "reading": "completion by occupation",
                  "day": "2026-05-18"
                }
              ],
              "sections": [],
              "why": [],
              "questions": []
            },
            {
              "id": "release-bond.amount",
              "title": "Release bond",
              "standing": "not yet",
              "readings": [],
              "amount": 49382.20,
              "sections": [],
              "why": [],
              "questions": []
            }
          ],
          "amount": {
            "demand": 39505.75,
            "leftOut": 412.80,
            "steps": [
              {
                "id": "agreed-price",
                "title": "Agreed price",
                "amount": 39605.75,
                "text": "The price agreed.",
                "section": "Civ. Code § 8430(a)(2)",
                "facts": []
              },
              {
                "id": "paid",
                "title": "Paid",
                "amount": -100.00,
                "text": "Payments received: $100.00.",
                "section": "Civ. Code § 8416(a)(1)",
                "facts": [
                  "entries[1]"
                ]
              }
            ]
          },
          "claimObstacles": [
            {
              "text": "The signer is not named.",
              "section": "Civ. Code § 8416(a)",
              "facts": []
            }
          ]
        }

        """,
        Encoding.UTF8.GetString(AssessmentJson.Write(AssessmentSample.Made)));

    [Fact]
    public void An_amount_that_is_not_known_says_so_and_one_in_doubt_gives_both_ends()
    {
        using var unknown =
            Written(new JobBuilder().Role(ClaimantRole.Subcontractor).Price(412_000m).Furnished("2026-04-01").Notice("2026-04-02"));
        Assert.True(unknown.RootElement.GetProperty("amount").GetProperty("isUnknown").GetBoolean());
        Assert.False(unknown.RootElement.GetProperty("amount").TryGetProperty("atLeast", out _));
        using var doubt = Written(new JobBuilder().Furnished("2025-09-01", 3_000m, until: "2025-09-20").Notice("2025-09-30"));
        var amount = doubt.RootElement.GetProperty("amount");
        Assert.Equal((0m, 3_000m), (amount.GetProperty("atLeast").GetDecimal(), amount.GetProperty("atMost").GetDecimal()));
        Assert.False(amount.TryGetProperty("isUnknown", out _));
    }

    private static JsonDocument Written(JobBuilder job) => JsonDocument.Parse(AssessmentJson.Write(job.On("2026-07-01")));
}
