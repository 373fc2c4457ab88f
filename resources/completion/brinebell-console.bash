# Completion of brinebell-console for bash. A test holds the words against --help of every verb.

_brinebell_console() {
    local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD - 1]} verb=${COMP_WORDS[1]}
    local words='' files=''
    COMPREPLY=()

    if ((COMP_CWORD == 1)); then
        words='check process-time boiling-point sheet forecast make-ahead rehearse records --help --version'
        mapfile -t COMPREPLY < <(compgen -W "$words" -- "$word")
        return
    fi

    # What an option of the verb takes.
    case $verb:$before in
        process-time:--pack) words='hot raw' ;;
        process-time:--jar) words='quarter-pint half-pint 12-ounce pint 1-1/2-pint quart half-gallon' ;;
        process-time:--method) words='boiling-water atmospheric-steam pressure-dial pressure-weighted' ;;
        records:--export) words='csv json' ;;
        records:--kind) words='class rehearsal' ;;
        *:--log | records:--output | records:--import) files=any ;;
        *:--altitude | *:--pressure | *:--product | *:--confirmed-by | *:--seed | *:--conflicts | *:--seconds) return ;;
        *:--runs | *:--correlation | *:--threads | *:--confidence | records:--session) return ;;
        records:--dish | records:--place | records:--from | records:--until) return ;;
        *)
            case $verb in
                check) files=toml words='--json' ;;
                process-time) words='--product --pack --jar --altitude --method --confirmed-by --json' ;;
                boiling-point) words='--altitude --pressure --why --json' ;;
                sheet) files=toml words='--seed --conflicts --seconds --json' ;;
                forecast) files=toml words='--runs --seed --correlation --threads --json' ;;
                make-ahead) files=toml words='--confidence --runs --seed --json' ;;
                rehearse) files=toml words='--seed --log --lose-boil --progress --json' ;;
                records)
                    words='--log --session --output --dish --place --from --until --kind
                           --import --export --batch-record --labels --json'
                    ;;
                *) return ;;
            esac
            words+=' --help'
            ;;
    esac

    if [[ -n $files && $word != -* ]]; then
        compopt -o filenames 2>/dev/null
        mapfile -t COMPREPLY < <(
            if [[ $files == toml ]]; then
                compgen -f -X '!*.toml' -- "$word"
                compgen -d -- "$word"
            else
                compgen -f -- "$word"
            fi
        )
    else
        mapfile -t COMPREPLY < <(compgen -W "$words" -- "$word")
    fi
}
complete -F _brinebell_console brinebell-console
